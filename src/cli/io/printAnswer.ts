import type { CliIo } from './cliIo.js';

/**
 * Prints a verb's answer: the document with `--json`, else the words.
 * @param document the contract's JSON document
 * @param words lines for a person; made only when they are shown
 */
export function printAnswer(
  io: CliIo,
  json: boolean | undefined,
  document: object,
  words: () => readonly string[],
): void {
  io.out(json ? `${JSON.stringify(document)}\n` : `${words().join('\n')}\n`);
}
