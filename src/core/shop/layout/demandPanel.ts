import type Fraction from 'fraction.js';
import { SeamgrainError } from '../../errors.js';
import { lengthWords } from '../../units/lengthWords.js';
import type { FaceSizeMm } from './layoutInput.js';

/**
 * Stops when the panel is smaller than the layout needs.
 * @throws SeamgrainError `cannotDo` that says by how much, in each direction
 */
export function demandPanel(
  panel: FaceSizeMm,
  needs: { readonly width: Fraction; readonly length: Fraction },
): void {
  const complaints = [
    shortfall('narrow', needs.width.valueOf(), panel.widthMm),
    shortfall('short', needs.length.valueOf(), panel.lengthMm),
  ].filter((text) => text !== '');
  if (complaints.length === 0) return;
  throw new SeamgrainError(
    'cannotDo',
    `the panel is ${complaints.join('; and ')}`,
    'take a larger panel, a smaller front or a thinner saw blade',
  );
}

function shortfall(word: string, needMm: number, haveMm: number): string {
  const shortMm = needMm - haveMm;
  if (shortMm < 1e-9) return '';
  return `${lengthWords(shortMm)} too ${word}: it needs ${lengthWords(needMm)} and has ${lengthWords(haveMm)}`;
}
