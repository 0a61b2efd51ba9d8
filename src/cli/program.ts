import { Command } from '@commander-js/extra-typings';
import type { CliIo } from './io/cliIo.js';
import { verbs } from './verbs/verbs.js';

/**
 * The whole command line. Failures are thrown, never printed here: `runCli` says them.
 * @param io where words go
 */
export function buildProgram(io: CliIo) {
  const program = new Command('seamgrain')
    .description(
      'Reads the grain in photographs of wooden panels: how visible is this joint, and where to cut.',
    )
    .version('0.1.0');
  for (const verb of verbs) program.addCommand(verb(io));
  for (const command of [program, ...program.commands]) {
    command.exitOverride().configureOutput({ writeOut: io.out, writeErr: () => {} });
  }
  return program;
}
