import { CommanderError } from '@commander-js/extra-typings';
import { SeamgrainError } from '../core/errors.js';
import type { CliIo } from './io/cliIo.js';
import { buildProgram } from './program.js';

const usageCodes = ['wrongUsage', 'badLength'];

/**
 * Runs one command line.
 * @param args what stands after the program's name
 * @returns exit status: 0 done, 1 failed, 2 wrong usage
 */
export async function runCli(args: readonly string[], io: CliIo): Promise<number> {
  const json = args.includes('--json');
  try {
    const program = await buildProgram(io, args[0]);
    await program.parseAsync([...args], { from: 'user' });
    return 0;
  } catch (thrown) {
    if (thrown instanceof CommanderError && thrown.exitCode === 0) return 0;
    const error = asSeamgrainError(thrown);
    if (json) io.out(`${JSON.stringify(errorDocument(error))}\n`);
    else io.err(`${error.message}\n${error.hint ? `${error.hint}\n` : ''}`);
    if (args.includes('--debug') && thrown instanceof Error) io.err(`${thrown.stack}\n`);
    return usageCodes.includes(error.code) ? 2 : 1;
  }
}

function errorDocument({ code, message, hint }: SeamgrainError): object {
  return { schema: 'seamgrain/error@1', code, message, hint };
}

function asSeamgrainError(thrown: unknown): SeamgrainError {
  if (thrown instanceof SeamgrainError) return thrown;
  if (thrown instanceof CommanderError) {
    if (thrown.code === 'commander.help') return noVerb();
    const message = thrown.message.replace(/^error: /, '');
    return new SeamgrainError(
      'wrongUsage',
      message,
      'See seamgrain --help, or seamgrain VERB --help.',
    );
  }
  const what = thrown instanceof Error ? thrown.message : String(thrown);
  return new SeamgrainError(
    'internal',
    `Something went wrong inside the program: ${what}`,
    'Run it again with --debug and report what it prints.',
  );
}

function noVerb(): SeamgrainError {
  return new SeamgrainError(
    'wrongUsage',
    'No verb was given.',
    'seamgrain --help lists the verbs.',
  );
}
