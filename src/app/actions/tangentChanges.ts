import type { LineMm } from '../../core/results/scoreResult.js';
import { changePhoto } from './panelChanges.js';

/** Lays a line along a ring. */
export function layTangent(photoId: string, line: LineMm): void {
  changePhoto(photoId, 'Lay a line along a ring', (photo) => {
    photo.ringTangents.push({ ...line });
  });
}

/** Takes every laid line away, so that the photo is read again. */
export function liftTangents(photoId: string): void {
  changePhoto(photoId, 'Lift the lines', (photo) => {
    photo.ringTangents = [];
  });
}
