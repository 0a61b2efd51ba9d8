import { asPhotographed } from '../state/planingAsItLies.js';
import type { BoardPair, Photo } from '../state/project.js';
import { changeProject } from '../state/workbench.js';
import { changePhoto } from './panelChanges.js';

/** Turns a board by 180 degrees in its own plane. */
export function turnBoard(photoId: string): void {
  changePhoto(photoId, 'Turn a board', (photo) => {
    photo.turned = !photo.turned;
  });
}

/** Turns a board over, so that its other photographed face shows. */
export function turnBoardOver(photoId: string): void {
  changePhoto(photoId, 'Turn a board over', (photo) => {
    photo.backUp = !photo.backUp;
  });
}

/** Slides a board along the panel, from lying centred. */
export function slideBoard(photoId: string, slideMm: number): void {
  changePhoto(photoId, 'Slide a board', (photo) => {
    photo.slideMm = slideMm;
  });
}

/** Keeps a board at the top or bottom of the panel, whatever order is looked for; null frees it. */
export function keepBoardAt(photoId: string, place: 'top' | 'bottom' | null): void {
  changeProject('Keep a board in its place', ({ photos }) => {
    for (const photo of photos) {
      if (photo.id === photoId) photo.boardPlace = place;
      else if (place !== null && photo.boardPlace === place) photo.boardPlace = null;
    }
  });
}

/** Says which face of a board looked to the heart of the tree; null: not known. */
export function nameHeartFace(photoId: string, heartFace: Photo['heartFace']): void {
  changePhoto(photoId, 'Name the heart side', (photo) => {
    photo.heartFace = heartFace;
  });
}

/** Says which way a board planes as it lies now; null: not known. */
export function namePlaning(photoId: string, towards: Photo['planes']): void {
  changePhoto(photoId, 'Name the way it planes', (photo) => {
    photo.planes = towards && asPhotographed(towards, photo);
  });
}

/** Keeps two boards side by side, as a kind of pair; null lets them part. */
export function pairBoards(ids: BoardPair['ids'], kind: BoardPair['kind'] | null): void {
  changeProject(kind ? 'Keep two boards together' : 'Let two boards part', (draft) => {
    const others = draft.boardPairs.filter((pair) => !ids.every((id) => pair.ids.includes(id)));
    draft.boardPairs = kind ? [...others, { ids: [ids[0], ids[1]], kind }] : others;
  });
}

/** Says that a photo shows the other face of a board, or no longer does. */
export function setOtherFace(boardId: string, backId: string | null): void {
  changeProject('Name the other face', ({ photos }) => {
    for (const photo of photos) {
      if (photo.backOf === boardId) photo.backOf = null;
      if (photo.id === backId) photo.backOf = boardId;
      if (photo.id === boardId && backId === null) photo.backUp = false;
    }
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
    for (const photo of draft.photos) {
      if (photo.backOf === photoId) photo.backOf = null;
      if (photo.endId === photoId) photo.endId = null;
    }
    draft.boardPairs = draft.boardPairs.filter(({ ids }) => !ids.includes(photoId));
    if (draft.shownPhotoId === photoId) draft.shownPhotoId = draft.photos[0]?.id ?? null;
  });
}

/** Lays the boards in an order and way round, from the top down; other photos keep their places. */
export function layInOrder(
  order: readonly {
    readonly id: string;
    readonly turned: boolean;
    readonly slideMm: number;
    readonly backUp: boolean;
  }[],
): void {
  changeProject('Lay the best order', (draft) => {
    const byId = new Map(draft.photos.map((photo) => [photo.id, photo]));
    const laid = order.flatMap(({ id, ...lie }) => {
      const photo = byId.get(id);
      if (!photo) return [];
      Object.assign(photo, lie);
      return [photo];
    });
    const moved = new Set(laid.map(({ id }) => id));
    let next = 0;
    draft.photos = draft.photos.map((photo) => (moved.has(photo.id) ? laid[next++]! : photo));
  });
}
