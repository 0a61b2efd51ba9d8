import sharp, { type Metadata } from 'sharp';
import { SeamgrainError } from '../../core/errors.js';
import { checkPhotoFile } from './checkPhotoFile.js';
import type { DecodedPhoto } from './decodedPhoto.js';

/** Behind transparent parts of a cut-out photo; the workbench page uses the same grey. */
const neutralGrey = { r: 128, g: 128, b: 128 };

/**
 * Decodes a photo: upright by its EXIF orientation, its colour profile converted to sRGB,
 * 8 bits a channel, transparent parts laid on grey.
 * @param bytes of a JPEG, PNG, WebP, TIFF or AVIF file
 * @param name for messages
 * @throws SeamgrainError badPhoto when it is empty, no photo, animated, damaged or over 150 megapixels
 */
export async function decodePhoto(bytes: Uint8Array, name: string): Promise<DecodedPhoto> {
  if (bytes.length === 0) {
    throw new SeamgrainError(
      'badPhoto',
      `The photo '${name}' is empty (0 bytes).`,
      'Copy it again.',
    );
  }
  const file = await readHeader(bytes, name);
  checkPhotoFile(file, name);
  const upright = sharp(bytes, { failOn: 'error', limitInputPixels: false, sequentialRead: true })
    .autoOrient()
    .toColourspace('srgb');
  const opaque = file.hasAlpha ? upright.flatten({ background: neutralGrey }) : upright;
  try {
    const { data, info } = await opaque
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const notes = await fileNotes(file, bytes);
    return { image: { width: info.width, height: info.height, data }, notes };
  } catch (error) {
    throw damaged(name, error);
  }
}

async function readHeader(bytes: Uint8Array, name: string): Promise<Metadata> {
  try {
    return await sharp(bytes, { limitInputPixels: false }).metadata();
  } catch (error) {
    if (/unsupported image format/.test(String(error))) {
      throw new SeamgrainError(
        'badPhoto',
        `'${name}' is not a photo that can be read, or its beginning is damaged.`,
        'Give a JPEG, PNG, WebP, TIFF or AVIF file.',
      );
    }
    throw damaged(name, error);
  }
}

async function fileNotes(file: Metadata, bytes: Uint8Array): Promise<string[]> {
  const notes: string[] = [];
  if (file.space === 'cmyk') {
    notes.push('The file holds printing inks (CMYK), not camera colours: colour steps may be off.');
  }
  if (file.space === 'b-w' || file.space === 'grey16') {
    notes.push('The file is black and white: a colour step shows only as a step in lightness.');
  }
  if ((file.pages ?? 1) > 1) notes.push(`The file holds ${file.pages} pages; the first was used.`);
  if (file.hasAlpha && !(await sharp(bytes, { limitInputPixels: false }).stats()).isOpaque) {
    notes.push('Transparent parts of the photo were laid on grey.');
  }
  return notes;
}

function damaged(name: string, error: unknown): SeamgrainError {
  const why = error instanceof Error ? error.message.split('\n')[0] : String(error);
  return new SeamgrainError(
    'badPhoto',
    `The photo '${name}' is damaged or cut short (${why}).`,
    'Copy it from the camera again.',
  );
}
