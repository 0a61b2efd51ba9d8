import { SeamgrainError } from '../../core/errors.js';
import type { RgbImage } from '../../core/image/rgbImage.js';
import { decodeHeic } from './heic/decodeHeic.js';
import { sniffPhotoKind } from './sniffPhotoKind.js';

/** A photograph as the jobs want it. */
export interface DecodedPhoto {
  readonly image: RgbImage;
  readonly notes: readonly string[];
}

const mostPixels = 120e6;

/**
 * Decodes a photograph to sRGB, turned upright, on white where it is see-through.
 * Runs in a worker: decoding and reading 12 megapixels back takes some hundred milliseconds.
 * @throws SeamgrainError in the user's words
 */
export async function decodePhoto(file: Blob): Promise<DecodedPhoto> {
  if (file.size === 0) throw new SeamgrainError('badPhoto', 'The file is empty.');
  const kind = sniffPhotoKind(new Uint8Array(await file.slice(0, 32).arrayBuffer()));
  if (kind === 'heic') {
    const { width, height, rgba, notes } = await decodeHeic(await file.arrayBuffer());
    checkSize(width, height);
    const pixels = new ImageData(rgba, width, height);
    return { image: dropAlpha(pixels), notes };
  }
  if (kind === 'tiff' || kind === 'gif' || kind === 'other') throw wrongKind(kind);
  const bitmap = await createImageBitmap(file).catch(() => {
    throw new SeamgrainError(
      'badPhoto',
      'The photo could not be read; the file seems to be damaged or cut short.',
      'Copy it from the phone again.',
    );
  });
  checkSize(bitmap.width, bitmap.height);
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const drawing = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (!drawing) throw new SeamgrainError('internal', 'This browser gave no drawing surface.');
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, bitmap.width, bitmap.height);
  drawing.drawImage(bitmap, 0, 0);
  const pixels = drawing.getImageData(0, 0, bitmap.width, bitmap.height);
  bitmap.close();
  return { image: dropAlpha(pixels), notes: [] };
}

function checkSize(width: number, height: number): void {
  if (width * height <= mostPixels) return;
  throw new SeamgrainError(
    'badPhoto',
    `The photo has ${Math.round((width * height) / 1e6)} megapixels; 120 is the most this page takes.`,
    'Save it smaller: 12 megapixels show a whole panel well.',
  );
}

function dropAlpha({ data, width, height }: ImageData): RgbImage {
  const rgb = new Uint8ClampedArray(width * height * 3);
  for (let from = 0, to = 0; from < data.length; from += 4, to += 3) {
    rgb[to] = data[from]!;
    rgb[to + 1] = data[from + 1]!;
    rgb[to + 2] = data[from + 2]!;
  }
  return { width, height, data: rgb };
}

function wrongKind(kind: 'tiff' | 'gif' | 'other'): SeamgrainError {
  const what = {
    tiff: 'Browsers cannot read TIFF pictures.',
    gif: 'A GIF has too few colours to judge wood by.',
    other: 'This file is no photo that the page can read.',
  }[kind];
  return new SeamgrainError('badPhoto', what, 'Bring a JPEG, HEIC, PNG, WebP or AVIF photo.');
}
