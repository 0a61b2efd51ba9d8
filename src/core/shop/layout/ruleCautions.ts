import type { LayoutPiece } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';
import type { SpareWood } from './spareWood.js';

/**
 * Says where rounding to the rule takes from a piece that cannot bear it: an outer piece without
 * that much to spare, or a front that one cut parts from its neighbour.
 * @param pieces pieces with exact and as-set sizes
 * @param spare spare wood when a finished face was asked for; null when everything outside is spare
 */
export function ruleCautions(pieces: readonly LayoutPiece[], spare: SpareWood | null): string[] {
  return pieces.flatMap((piece) => {
    const across = piece.dressedWidthMm - piece.asSet.widthMm;
    const along = piece.lengthMm - piece.asSet.lengthMm;
    if (piece.kind === 'front') return frontCautions(piece.name, Math.max(across, along));
    if (!spare || (piece.kind !== 'rail' && piece.kind !== 'end')) return [];
    const lostMm = piece.kind === 'rail' ? across : along;
    const spareMm = spareOf(piece, spare);
    if (lostMm <= spareMm + 1e-6) return [];
    return [
      `Rounding to this rule takes ${lengthWords(lostMm)} off the ${piece.name}, which has ${lengthWords(spareMm)} to spare: use a finer rule or a wider blank.`,
    ];
  });
}

function frontCautions(name: string, lostMm: number): string[] {
  if (lostMm < 1e-6) return [];
  return [
    `Rounding to this rule takes ${lengthWords(lostMm)} off the ${name}, because one cut parts it from its neighbour: use a finer rule, or count it as trim.`,
  ];
}

function spareOf({ kind, name }: LayoutPiece, spare: SpareWood): number {
  if (kind === 'end') return name.startsWith('left') ? spare.leftMm : spare.rightMm;
  if (name === 'upper rail') return spare.upperMm;
  return name === 'lower rail' ? spare.lowerMm : 0;
}
