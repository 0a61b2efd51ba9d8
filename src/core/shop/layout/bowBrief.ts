import { lengthWords } from '../../units/lengthWords.js';
import type { ExactLayout } from './exactLayout.js';
import type { SpareWood } from './spareWood.js';

/** `bowWords` in two lines, for paper. */
export function bowBrief({ dress, face }: ExactLayout, spare: SpareWood): string {
  const dressMm = dress.valueOf();
  const rails = face
    ? ` (${lengthWords(spare.upperMm + dressMm)} to give above, ${lengthWords(spare.lowerMm + dressMm)} below)`
    : '';
  const strip = dressMm > 0 ? `not the strip (${lengthWords(dressMm)} an edge)` : 'never the strip';
  return `Bowed when it comes free: rest it, correct the rail${rails}, ${strip}; convex before hollow.`;
}
