import type { Metadata } from 'sharp';
import { SeamgrainError } from '../../core/errors.js';

/** Above this the decoded photo alone would take over 450 MB. */
const mostMegapixels = 150;
const photoFormats = ['jpeg', 'png', 'webp', 'tiff', 'heif'];
const saveHint = 'Save it as JPEG or PNG.';

/**
 * Refuses what is no single photo, before its pixels are decoded.
 * @param file what the file's header says
 * @param name the file's name, for the message
 * @throws SeamgrainError badPhoto
 */
export function checkPhotoFile(file: Metadata, name: string): void {
  const format = file.format ?? 'unknown';
  if (!photoFormats.includes(format)) {
    throw refuse(`'${name}' is a ${format.toUpperCase()} file, not a photo.`, saveHint);
  }
  if (format === 'heif' && file.compression !== 'av1') {
    throw refuse(
      `'${name}' is a HEIC photo, which this command cannot decode.`,
      'Save it as JPEG on the phone (camera setting "most compatible"), or open it in the workbench page.',
    );
  }
  if ((file.pages ?? 1) > 1 && format !== 'tiff') {
    throw refuse(
      `'${name}' is animated: it holds ${file.pages} frames.`,
      'Save one frame as a photo.',
    );
  }
  const megapixels = (file.width * file.height) / 1e6;
  if (megapixels > mostMegapixels) {
    throw refuse(
      `'${name}' has ${Math.round(megapixels)} megapixels; at most ${mostMegapixels} can be read.`,
      'Crop it to the panel or make it smaller: 6 to 8 px/mm is all that is used.',
    );
  }
}

function refuse(message: string, hint: string): SeamgrainError {
  return new SeamgrainError('badPhoto', message, hint);
}
