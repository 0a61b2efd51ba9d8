import { SeamgrainError } from '../../core/errors.js';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { Photo } from '../state/project.js';
import { readPicture } from '../storage/keepProject.js';
import type { KeptPicture } from '../storage/openDatabase.js';
import { jobs } from '../worker/jobs.js';
import { decodeFile, makeDrawable } from '../worker/photoHands.js';
import type { PhotoOnShelf } from '../worker/photoWorker.js';
import type { Drawable } from './drawableOf.js';

/** A rectified panel and its pictures for the screen. */
export interface PanelOnShelf {
  readonly key: string;
  readonly photoImageId: string;
  readonly panel: PanelPhoto;
  readonly drawable: Drawable;
}

const files = new Map<string, KeptPicture>();
const photos = new Map<string, Promise<PhotoOnShelf>>();
const panels = new Map<string, Promise<PanelOnShelf>>();
const mostPhotos = 3;
const mostPanels = 16;

/** Puts a photo's bytes within reach, before or after they are kept. */
export function shelveFile(picture: KeptPicture): void {
  files.set(picture.id, picture);
}

/** A photo's bytes as they came from the camera. */
export async function fileOf(imageId: string): Promise<KeptPicture> {
  const file = files.get(imageId) ?? (await readPicture(imageId));
  if (!file) {
    throw new SeamgrainError(
      'badPhoto',
      'The photo is no longer on this device.',
      'Bring it in again.',
    );
  }
  files.set(imageId, file);
  return file;
}

/** The decoded photo; only the last few stay decoded. */
export function decodedPhoto(imageId: string): Promise<PhotoOnShelf> {
  return remember(photos, imageId, mostPhotos, async () => {
    const { bytes, type } = await fileOf(imageId);
    return decodeFile(new Blob([bytes], { type }));
  });
}

/** What a photo's panel depends on. */
export const panelKey = ({ imageId, scale }: Photo): string => JSON.stringify([imageId, scale]);

/**
 * The photo's panel, squared up in the worker; the same promise while nothing it depends on changes.
 * @param maxPxPerMm a density not to go beyond, so that several panels can share one
 */
export function panelOf(photo: Photo, maxPxPerMm?: number): Promise<PanelOnShelf> {
  const { scale, imageId } = photo;
  if (!scale) {
    return Promise.reject(new SeamgrainError('badPanel', 'The panel is not pinned yet.'));
  }
  const key = maxPxPerMm ? `${panelKey(photo)} ${maxPxPerMm}` : panelKey(photo);
  return remember(panels, key, mostPanels, async () => {
    const { image, notes } = await decodedPhoto(imageId);
    const panel = await jobs.start('rectify', {
      photo: image,
      scale,
      ...(maxPxPerMm ? { maxPxPerMm } : {}),
    }).result;
    const all = { ...panel, notes: [...notes, ...panel.notes] };
    return { key, photoImageId: imageId, panel: all, drawable: await makeDrawable(panel.image) };
  });
}

/** One promise per key, the least lately asked forgotten first; a failure is not remembered. */
function remember<T>(
  shelf: Map<string, Promise<T>>,
  key: string,
  most: number,
  make: () => Promise<T>,
): Promise<T> {
  const there = shelf.get(key);
  if (there) {
    shelf.delete(key);
    shelf.set(key, there);
    return there;
  }
  const made = make();
  shelf.set(key, made);
  made.catch(() => shelf.delete(key));
  const oldest = shelf.keys().next().value;
  if (shelf.size > most && oldest !== undefined) shelf.delete(oldest);
  return made;
}
