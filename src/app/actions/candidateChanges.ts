import type { Photo } from '../state/project.js';
import { changeProject } from '../state/workbench.js';
import { changePhoto } from './panelChanges.js';

/** Says which photo shows a board's end; null: none does. One end is of one board. */
export function nameEnd(photoId: string, endId: string | null): void {
  changeProject('Name its end', ({ photos }) => {
    for (const photo of photos) {
      if (photo.id === photoId) photo.endId = endId;
      else if (endId !== null && photo.endId === endId) photo.endId = null;
      // An end is no board: it has no end of its own.
      if (photo.id === endId) photo.endId = null;
    }
  });
}

/** Says which end of the board that is, the photographed face up. */
export function nameEndSide(photoId: string, side: Photo['endSide']): void {
  changePhoto(photoId, 'Name the side of its end', (photo) => {
    photo.endSide = side;
  });
}
