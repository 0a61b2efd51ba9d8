import { changeProject } from '../state/workbench.js';
import { changePhoto } from './panelChanges.js';

/** Turns a board by 180 degrees in its own plane. */
export function turnBoard(photoId: string): void {
  changePhoto(photoId, 'Turn a board', (photo) => {
    photo.turned = !photo.turned;
  });
}

/** Moves a photo to a place in the order; those between make room. */
export function moveBoard(photoId: string, place: number, gesture: string | null = null): void {
  changeProject(
    'Move a board',
    ({ photos }) => {
      const from = photos.findIndex(({ id }) => id === photoId);
      if (from < 0 || from === place) return;
      const [board] = photos.splice(from, 1);
      if (board) photos.splice(place, 0, board);
    },
    gesture,
  );
}

/** Takes a photo out of the project. */
export function removePhoto(photoId: string): void {
  changeProject('Take a photo away', (draft) => {
    draft.photos = draft.photos.filter(({ id }) => id !== photoId);
    if (draft.shownPhotoId === photoId) draft.shownPhotoId = draft.photos[0]?.id ?? null;
  });
}

/** Lays the boards in an order and way round, from the top down; other photos keep their places. */
export function layInOrder(
  order: readonly { readonly id: string; readonly turned: boolean }[],
): void {
  changeProject('Lay the best order', (draft) => {
    const byId = new Map(draft.photos.map((photo) => [photo.id, photo]));
    const laid = order.flatMap(({ id, turned }) => {
      const photo = byId.get(id);
      if (!photo) return [];
      photo.turned = turned;
      return [photo];
    });
    const moved = new Set(laid.map(({ id }) => id));
    let next = 0;
    draft.photos = draft.photos.map((photo) => (moved.has(photo.id) ? laid[next++]! : photo));
  });
}
