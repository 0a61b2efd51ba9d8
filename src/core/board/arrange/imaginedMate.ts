import type { PanelPhoto } from '../../image/panelPhoto.js';
import type { BoardPhotos } from './boardPhotos.js';

/**
 * The mate that resawing a board would give, imagined from its one photo: the mirrored face for a
 * book-match, the face itself for a slip-match. The kerf between the two real faces is left out,
 * so a real pair matches a little less well.
 */
export function imaginedMate({ faceA }: BoardPhotos, kind: 'book' | 'slip'): BoardPhotos {
  const photo = kind === 'book' ? mirrored(faceA.photo) : faceA.photo;
  return { faceA: { photo, name: faceA.name }, faceB: null, isImagined: true };
}

/** Top and bottom exchanged. */
function mirrored(photo: PanelPhoto): PanelPhoto {
  const { width, height, data } = photo.image;
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    const from = 3 * width * (height - 1 - y);
    out.set(data.subarray(from, from + 3 * width), 3 * width * y);
  }
  return { ...photo, image: { width, height, data: out } };
}
