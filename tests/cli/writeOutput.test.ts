import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeOutput } from '../../src/cli/io/writeOutput.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-write-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('writeOutput', () => {
  it('makes the folder, writes every file whole and leaves nothing else', async () => {
    const out = join(folder, 'a', 'b');
    const paths = await writeOutput(out, [
      { name: 'one.txt', data: 'one' },
      { name: 'two.bin', data: new Uint8Array([1, 2]) },
    ]);
    expect(paths).toEqual([join(out, 'one.txt'), join(out, 'two.bin')]);
    expect((await readdir(out)).sort()).toEqual(['one.txt', 'two.bin']);
    expect(await readFile(join(out, 'one.txt'), 'utf8')).toBe('one');
  });

  it('replaces what an earlier run wrote', async () => {
    const out = join(folder, 'again');
    for (const data of ['old', 'new']) await writeOutput(out, [{ name: 'x.txt', data }]);
    expect(await readFile(join(out, 'x.txt'), 'utf8')).toBe('new');
  });

  it('leaves nothing behind when the folder is a file', async () => {
    await writeFile(join(folder, 'file'), 'here already');
    const failure = writeOutput(join(folder, 'file'), [{ name: 'x.txt', data: 'x' }]);
    await expect(failure).rejects.toMatchObject({ code: 'cannotDo' });
    expect(await readFile(join(folder, 'file'), 'utf8')).toBe('here already');
  });

  it('takes back the folders it made and the parts it wrote when one file fails', async () => {
    const before = await readdir(folder);
    const files = [
      { name: 'good.txt', data: 'x' },
      { name: join('no', 'such', 'place.txt'), data: 'x' },
    ];
    await expect(writeOutput(join(folder, 'new', 'deep'), files)).rejects.toMatchObject({
      code: 'cannotDo',
    });
    expect(await readdir(folder)).toEqual(before);
  });

  it('keeps the old files when a new one fails', async () => {
    const out = join(folder, 'kept');
    await mkdir(out);
    await writeFile(join(out, 'good.txt'), 'old');
    const files = [
      { name: 'good.txt', data: 'new' },
      { name: join('no', 'place.txt'), data: 'x' },
    ];
    await expect(writeOutput(out, files)).rejects.toMatchObject({ code: 'cannotDo' });
    expect(await readdir(out)).toEqual(['good.txt']);
    expect(await readFile(join(out, 'good.txt'), 'utf8')).toBe('old');
  });
});
