import type { CornersPx } from '../../core/image/photoScale.js';
import { decodedPhoto } from '../images/shelf.js';
import { jobs } from '../worker/jobs.js';

/** A first guess of the panel's corners; null when nothing stands out or the guess fails. */
export async function guessCorners(imageId: string): Promise<CornersPx | null> {
  try {
    const { image } = await decodedPhoto(imageId);
    return await jobs.start('outline', { photo: image }).result;
  } catch (thrown) {
    console.warn('No first guess of the corners.', thrown);
    return null;
  }
}
