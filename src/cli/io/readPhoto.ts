import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { SeamgrainError } from '../../core/errors.js';
import type { DecodedPhoto } from './decodedPhoto.js';
import { decodePhoto } from './decodePhoto.js';

/**
 * Reads a photo from disk.
 * @param path JPEG, PNG, WebP, TIFF or AVIF
 * @throws SeamgrainError badPhoto when the file is missing, empty, no photo, damaged or too large
 */
export async function readPhoto(path: string): Promise<DecodedPhoto> {
  return decodePhoto(await readBytes(path), basename(path));
}

async function readBytes(path: string): Promise<Buffer> {
  try {
    return await readFile(path);
  } catch (error) {
    throw new SeamgrainError(
      'badPhoto',
      `The photo '${path}' ${reasonOf(error)}.`,
      'Check its name and folder.',
    );
  }
}

function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  const reasons: Record<string, string> = {
    ENOENT: 'was not found',
    EISDIR: 'is a folder',
    EACCES: 'may not be read',
    ERR_FS_FILE_TOO_LARGE: 'is larger than 2 GB',
  };
  return reasons[code] ?? `could not be read (${code || String(error)})`;
}
