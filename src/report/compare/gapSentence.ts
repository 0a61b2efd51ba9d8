import type { CandidateStock } from '../../core/pipeline/candidateStock.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { gapText } from './describeCompare.js';

/**
 * The seasonal gap of a front from this candidate, or of all its width, in a sentence, with what it
 * may be within the error of the rings. Empty where no gap was asked.
 *
 * @param acrossMm what the gap is for, across the grain
 * @param ofFront a front's size; false: the candidate's whole width
 */
export function gapSentence(
  { gapMm, gapRangeMm, ringsBy }: Pick<CandidateStock, 'gapMm' | 'gapRangeMm' | 'ringsBy'>,
  acrossMm: number,
  ofFront: boolean,
  units: LengthUnits,
): string {
  if (gapMm === null) return '';
  const across = placeText(acrossMm, units);
  const what = ofFront ? `A front ${across} across` : `All its width, ${across},`;
  const wants = `${what} wants a gap of`;
  if (!ringsBy) return `${wants} ${gapText(gapMm, units)} if it is flatsawn, less if not.`;
  const [least, most] = (gapRangeMm ?? [gapMm, gapMm]).map((mm) => gapText(mm, units));
  return least === most
    ? `${wants} ${gapText(gapMm, units)}.`
    : `${wants} ${gapText(gapMm, units)}, ${least} to ${most} within the error of its rings.`;
}
