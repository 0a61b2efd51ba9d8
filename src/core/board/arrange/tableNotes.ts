import { labPlanes } from '../../colour/labPlanes.js';
import { standingGrainNotes } from '../../grain/standingGrainNotes.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { BoardPhotos } from './boardPhotos.js';

/** Below this many px/mm fine grain cannot be judged. */
const leastPxPerMm = 3;
/** Own lines lie 10 mm from the edge and want 5 mm beyond. */
const leastWidthForFigureMm = 15;

/** What the boards' photos as a whole could not tell, in the user's words. */
export function tableNotes(boards: readonly BoardPhotos[], options: ArrangeOptions): string[] {
  const photos = boards.flatMap(({ faceA, faceB }) => (faceB ? [faceA, faceB] : [faceA]));
  const notes = photos.flatMap(({ photo, name }) => [
    ...photo.notes.map((note) => `${name}: ${note}`),
    ...standing(photo).map((note) => `${name}: ${note}`),
  ]);
  if (photos.some(({ photo }) => photo.pxPerMm < leastPxPerMm)) {
    notes.push('A photo has less than 3 px/mm: fine grain cannot be judged.');
  }
  const lengths = boards.map(({ faceA }) => faceA.photo.widthMm);
  if (options.spareMm === 0 && Math.max(...lengths) - Math.min(...lengths) > 2) {
    notes.push('The boards differ in length; they were laid with their middles in line.');
  }
  if (options.jointMm === 0) {
    notes.push('Nothing was allowed for jointing: edges were taken as photographed.');
  }
  const narrow = boards.some(
    ({ faceA }) => faceA.photo.heightMm - 2 * options.jointMm < leastWidthForFigureMm,
  );
  if (narrow) {
    notes.push(
      'A board is too narrow to know its own figure; joints beside it may be scored too high.',
    );
  }
  notes.push(
    options.useColour
      ? 'Boards were photographed one by one: a change of light or exposure between photos counts as a colour step.'
      : 'Colour steps were left out; judge the colour of neighbours by eye.',
  );
  return notes;
}

function standing({ image, pxPerMm }: BoardPhotos['faceA']['photo']): string[] {
  const { lightness } = labPlanes(image, Math.max(1, Math.round(pxPerMm)));
  return standingGrainNotes(lightness, 'edges');
}
