import type { RgbImage } from '../../core/image/rgbImage.js';
import { toJobFailure } from '../../job/jobFailure.js';
import { type Drawable, drawableOf } from '../images/drawableOf.js';
import { type DecodedPhoto, decodePhoto } from '../intake/decodePhoto.js';

/** What the page asks of this worker. */
export type PhotoRequest =
  | { readonly id: number; readonly kind: 'decode'; readonly file: Blob }
  | { readonly id: number; readonly kind: 'draw'; readonly image: RgbImage };

/** A decoded photo with its pictures for the screen. */
export interface PhotoOnShelf extends DecodedPhoto {
  readonly drawable: Drawable;
}

async function answer(request: PhotoRequest): Promise<PhotoOnShelf | Drawable> {
  if (request.kind === 'draw') return drawableOf(request.image);
  const photo = await decodePhoto(request.file);
  return { ...photo, drawable: await drawableOf(photo.image) };
}

self.addEventListener('message', async ({ data }: MessageEvent<PhotoRequest>) => {
  try {
    const result = await answer(data);
    const drawable = 'drawable' in result ? result.drawable : result;
    const moves: Transferable[] = [drawable.full, drawable.small];
    if ('image' in result) moves.push(result.image.data.buffer as ArrayBuffer);
    self.postMessage({ id: data.id, result }, { transfer: moves });
  } catch (thrown) {
    self.postMessage({ id: data.id, error: toJobFailure(thrown) });
  }
});
