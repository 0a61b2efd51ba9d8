import type { CommandUnknownOpts } from '@commander-js/extra-typings';
import type { CliIo } from '../io/cliIo.js';

/** Makes the command of one verb. */
export type Verb = (io: CliIo) => CommandUnknownOpts;

/** Every verb, in the order that help lists them. */
export const verbs: readonly Verb[] = [];
