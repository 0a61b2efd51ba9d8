import { SeamgrainError } from '../../errors.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { BoardPhotos, FacePhoto } from './boardPhotos.js';

/** A board narrower than this after jointing cannot be read, mm. */
const leastWidthMm = 8;
/** Boards whose lengths differ by more than this share are not for one panel. */
const leastLengthShare = 0.5;
/** Two photos of one board may differ by this much in size, mm. */
const sameBoardMm = 3;

/**
 * Refuses boards that cannot make a panel.
 *
 * @throws SeamgrainError `badPanel` for fewer than two boards, one too narrow or far too short,
 *   or two faces that are not of one board.
 */
export function checkBoards(
  boards: readonly BoardPhotos[],
  { jointMm, spareMm }: ArrangeOptions,
): void {
  if (boards.length < 2) {
    refuse('One board makes no joint.', 'Give the photos of two boards or more.');
  }
  const longest = Math.max(...boards.map((b) => b.faceA.photo.widthMm));
  for (const { faceA, faceB } of boards) {
    const { widthMm, heightMm } = faceA.photo;
    if (heightMm - 2 * jointMm < leastWidthMm) {
      refuse(
        `The board '${faceA.name}' is ${(heightMm - 2 * jointMm).toFixed(1)} mm wide after jointing: too narrow to read.`,
        'Check the size given and what jointing takes; the photo must be cropped to the board.',
      );
    }
    if (widthMm < leastLengthShare * longest || widthMm - spareMm < 20) {
      refuse(
        `The board '${faceA.name}' is only ${widthMm.toFixed(0)} mm long.`,
        'Lay boards of about one length together, with less spare length.',
      );
    }
    if (heightMm > 1.2 * widthMm) {
      refuse(
        `The board '${faceA.name}' is wider than it is long.`,
        'Turn the photo so that the grain runs from left to right.',
      );
    }
    if (faceB) checkFaces(faceA, faceB);
  }
}

function checkFaces(a: FacePhoto, b: FacePhoto): void {
  const length = Math.abs(a.photo.widthMm - b.photo.widthMm);
  const width = Math.abs(a.photo.heightMm - b.photo.heightMm);
  if (length <= sameBoardMm && width <= sameBoardMm) return;
  refuse(
    `'${a.name}' and '${b.name}' are not one size, so they are not two faces of one board.`,
    'Crop both photos to the board, and join only faces of the same board with +.',
  );
}

function refuse(message: string, hint: string): never {
  throw new SeamgrainError('badPanel', message, hint);
}
