import { execFile, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';

const bin = new URL('../../dist/cli/bin.js', import.meta.url).pathname;
const run = promisify(execFile);

beforeAll(() => {
  if (!existsSync(bin)) throw new Error('These tests run the built command: npm run build first.');
});

describe('the command as a process', () => {
  it('answers with status 0', async () => {
    expect((await run(process.execPath, [bin, '--version'])).stdout).toBe('0.1.0\n');
  });

  it('ends wrong usage with status 2 and a failure with status 1', async () => {
    await expect(run(process.execPath, [bin, 'polish'])).rejects.toMatchObject({
      code: 2,
      stdout: '',
      stderr: expect.stringMatching(/unknown command/),
    });
    const missing = ['score', 'none.jpg', '--px-per-mm', '6', '--json'];
    await expect(run(process.execPath, [bin, ...missing])).rejects.toMatchObject({
      code: 1,
      stderr: '',
      stdout: expect.stringMatching(/^\{"schema":"seamgrain\/error@1".*\}\n$/),
    });
  });

  it('ends quietly when its reader stops early', async () => {
    const child = spawn(process.execPath, [bin, '--help'], { stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.destroy();
    let said = '';
    child.stderr.on('data', (text) => {
      said += text;
    });
    const status = await new Promise((resolve) => child.on('close', resolve));
    expect({ status, said }).toEqual({ status: 0, said: '' });
  });
});
