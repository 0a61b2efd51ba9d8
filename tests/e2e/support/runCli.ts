import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const bin = fileURLToPath(new URL('../../../dist/cli/bin.js', import.meta.url));

/** Runs the built command line with `--json` and reads its one document. */
export async function runCli(...words: readonly string[]): Promise<unknown> {
  const { stdout } = await promisify(execFile)(process.execPath, [bin, ...words, '--json'], {
    maxBuffer: 64 * 1024 * 1024,
  });
  return JSON.parse(stdout);
}
