import type { Command } from '@commander-js/extra-typings';
import type { CliIo } from '../io/cliIo.js';

/** Adds one verb to the program: `program.command('name')`, its options, its action. */
export type Verb = (program: Command, io: CliIo) => void;
