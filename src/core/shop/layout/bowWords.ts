import { lengthWords } from '../../units/lengthWords.js';
import type { ExactLayout } from './exactLayout.js';
import type { SpareWood } from './spareWood.js';

/**
 * What to do when a piece bows at ripping: which piece gives, and how much it has to give.
 * Common practice, no published source.
 */
export function bowWords(layout: ExactLayout, spare: SpareWood): string {
  const { dress, face } = layout;
  const stripGive =
    dress.valueOf() > 0 ? `only its dressing, ${lengthWords(dress.valueOf())} an edge` : 'nothing';
  const railGive = face
    ? `the upper rail has ${lengthWords(spare.upperMm + dress.valueOf())} and the lower ${lengthWords(spare.lowerMm + dress.valueOf())} to give`
    : 'the rails have what your finished face does not need';
  return `A piece that bows when it comes free: rest it, then correct the rail, not the strip: ${railGive}, the strip ${stripGive}. Correct a convex edge before a hollow one, a shaving at a time. Never pull a bow straight with clamps.`;
}
