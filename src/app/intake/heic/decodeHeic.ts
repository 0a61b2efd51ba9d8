import { SeamgrainError } from '../../../core/errors.js';
import { convertToSrgb } from './convertToSrgb.js';
import { displayP3 } from './displayP3.js';
import { readMatrixProfile } from './matrixProfile.js';
import { readColourProfile } from './readColourProfile.js';

interface HeifPicture {
  get_width(): number;
  get_height(): number;
  is_primary(): boolean;
  display(
    into: { data: Uint8ClampedArray; width: number; height: number },
    done: (result: object | null) => void,
  ): void;
  free(): void;
}

/** A decoded photograph in sRGB, four bytes a pixel. */
export interface DecodedHeic {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
  readonly notes: readonly string[];
}

/**
 * Decodes a phone's HEIC photograph to sRGB. The decoder (about 2 MB) is loaded on first use.
 * It turns the picture as the file's `irot` and `imir` say; the colour profile is applied here.
 * @throws SeamgrainError when the file cannot be decoded
 */
export async function decodeHeic(file: ArrayBuffer): Promise<DecodedHeic> {
  const { default: start } = await import('libheif-js/libheif-wasm/libheif-bundle.mjs');
  const { HeifDecoder } = start() as unknown as {
    HeifDecoder: new () => { decode(bytes: Uint8Array): HeifPicture[] };
  };
  const pictures = new HeifDecoder().decode(new Uint8Array(file));
  const main = pictures.find((picture) => picture.is_primary()) ?? pictures[0];
  if (!main) throw unreadable();
  const width = main.get_width();
  const height = main.get_height();
  const rgba = new Uint8ClampedArray(width * height * 4);
  const done = await new Promise<object | null>((resolve) =>
    main.display({ data: rgba, width, height }, resolve),
  );
  for (const picture of pictures) picture.free();
  if (!done) throw unreadable();
  return { width, height, rgba, notes: toSrgb(rgba, file) };
}

function toSrgb(rgba: Uint8ClampedArray, file: ArrayBuffer): readonly string[] {
  const profile = readColourProfile(file);
  if (!profile) return [];
  if (profile.kind === 'codePoints') {
    if (profile.transfer === 16 || profile.transfer === 18) {
      return ['The photo is high dynamic range; its colours are only roughly right here.'];
    }
    if (profile.primaries === 12) convertToSrgb(rgba, displayP3);
    return [];
  }
  const matrix = readMatrixProfile(profile.bytes);
  if (!matrix) return ["The photo's colour profile could not be read; colours are taken as sRGB."];
  convertToSrgb(rgba, matrix);
  return [];
}

const unreadable = () =>
  new SeamgrainError(
    'badPhoto',
    'This HEIC photo could not be read.',
    'Save it as JPEG on the phone and bring that in.',
  );
