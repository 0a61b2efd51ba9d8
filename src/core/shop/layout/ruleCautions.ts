import type { LayoutPiece } from '../../results/layoutResult.js';
import { lengthWords } from './lengthWords.js';
import type { SpareWood } from './spareWood.js';

/**
 * Says where rounding to the rule takes more from an outer piece than it has to spare.
 * @param pieces pieces with exact and as-set sizes
 * @param spare spare wood when a finished face was asked for; null when everything outside is spare
 */
export function ruleCautions(pieces: readonly LayoutPiece[], spare: SpareWood | null): string[] {
  if (!spare) return [];
  const room: Readonly<Record<string, number>> = {
    'upper rail': spare.upperMm,
    'lower rail': spare.lowerMm,
  };
  return pieces.flatMap(({ name, kind, dressedWidthMm, asSet, lengthMm }) => {
    const across = kind === 'rail';
    const lostMm = across ? dressedWidthMm - asSet.widthMm : lengthMm - asSet.lengthMm;
    const spareMm =
      kind === 'end' ? (name.startsWith('left') ? spare.leftMm : spare.rightMm) : (room[name] ?? 0);
    if ((kind !== 'rail' && kind !== 'end') || lostMm <= spareMm + 1e-6) return [];
    return [
      `Rounding to this rule takes ${lengthWords(lostMm)} off the ${name}, which has ${lengthWords(spareMm)} to spare: use a finer rule or a wider blank.`,
    ];
  });
}
