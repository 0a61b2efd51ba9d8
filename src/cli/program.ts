import { Command } from '@commander-js/extra-typings';
import type { CliIo } from './io/cliIo.js';
import { addVerbs } from './verbs/addVerbs.js';

/**
 * The whole command line. Failures are thrown, never printed here: `runCli` says them.
 * @param io where words go
 * @param first first word of the command line: only that verb is loaded
 */
export async function buildProgram(io: CliIo, first?: string): Promise<Command> {
  const program = new Command('seamgrain')
    .description(
      'Reads the grain in photographs of wooden panels: how visible is this joint, and where to cut.',
    )
    .version('0.1.0')
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: () => {} });
  await addVerbs(program, io, first);
  return program;
}
