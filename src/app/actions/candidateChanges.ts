import type { ImaginedBoard, Photo } from '../state/project.js';
import { changeProject } from '../state/workbench.js';
import { changePhoto } from './panelChanges.js';

/** Says which photo shows a board's end; null: none does. One end is of one board. */
export function nameEnd(photoId: string, endId: string | null): void {
  changeProject('Name its end', (draft) => {
    for (const photo of draft.photos) {
      if (photo.id === photoId) photo.endId = endId;
      else if (endId !== null && photo.endId === endId) photo.endId = null;
      // An end is no board: it has no end of its own and lies beside none.
      if (photo.id === endId) photo.endId = null;
    }
    if (endId !== null)
      draft.boardPairs = draft.boardPairs.filter(({ ids }) => !ids.includes(endId));
  });
}

/** Says which end of the board that is, the photographed face up. */
export function nameEndSide(photoId: string, side: Photo['endSide']): void {
  changePhoto(photoId, 'Name the side of its end', (photo) => {
    photo.endSide = side;
  });
}

/** Adds a board that is to be drawn, of a size; its wood is changed afterwards. */
export function imagineBoard(size: Pick<ImaginedBoard, 'widthMm' | 'heightMm'>): void {
  changeProject('Add a drawn board', ({ imaginedBoards }) => {
    imaginedBoards.push({
      ...{ id: crypto.randomUUID(), cut: 'quartered', wood: 'diffuse-porous', seed: 1 },
      ...{ ringWidthMm: 2, contrast: 1, ...size },
    });
  });
}

/** Changes what a drawn board is. */
export function changeImagined(id: string, change: Partial<ImaginedBoard>): void {
  changeProject('Change a drawn board', ({ imaginedBoards }) => {
    const board = imaginedBoards.find((each) => each.id === id);
    if (board) Object.assign(board, change);
  });
}

/** Takes a drawn board away. */
export function removeImagined(id: string): void {
  changeProject('Take a drawn board away', (draft) => {
    draft.imaginedBoards = draft.imaginedBoards.filter((board) => board.id !== id);
  });
}
