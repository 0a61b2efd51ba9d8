import { mkdir, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { SeamgrainError } from '../../core/errors.js';

/** A finished file, still in memory. */
export interface OutputFile {
  readonly name: string;
  readonly data: Uint8Array | string;
}

/**
 * Writes files into a folder so that none is ever there half: each goes under a temporary name
 * first, and all are renamed once every one is whole.
 * @param folder made when it is not there
 * @returns the paths written
 * @throws SeamgrainError cannotDo when the folder cannot be written; nothing is left behind
 */
export async function writeOutput(folder: string, files: readonly OutputFile[]): Promise<string[]> {
  const temporary = (name: string) => join(folder, `.${name}.${process.pid}.part`);
  let made: string | undefined;
  try {
    made = await mkdir(folder, { recursive: true });
    await allOf(files.map(({ name, data }) => writeFile(temporary(name), data)));
    for (const { name } of files) await rename(temporary(name), join(folder, name));
  } catch (error) {
    await Promise.allSettled(files.map(({ name }) => rm(temporary(name), { force: true })));
    if (made) await removeEmpty(folder, made);
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new SeamgrainError(
      'cannotDo',
      `Nothing could be written to '${folder}' (${code}).`,
      'Give --out a folder that may be written and has room.',
    );
  }
  return files.map(({ name }) => join(folder, name));
}

/** Waits for all of them, also after one failed, so that none still writes while others are removed. */
async function allOf(writing: Promise<void>[]): Promise<void> {
  const failed = (await Promise.allSettled(writing)).find(({ status }) => status === 'rejected');
  if (failed) await Promise.reject((failed as PromiseRejectedResult).reason);
}

/** Takes away the folders from `folder` up to `first` that were made for this, where empty. */
async function removeEmpty(folder: string, first: string): Promise<void> {
  for (let at = folder; at.length >= first.length; at = dirname(at)) {
    await rmdir(at).catch(() => {});
  }
}
