import { movementUncertainty } from './changeUncertaintyMm.js';
import type { GapInput } from './gapInput.js';

/**
 * Standard uncertainty of the front's change against its opening's.
 * A frame stays: it is the front's own. A solid surround of the same stock errs with the front, so
 * only a difference in moisture is left; one of another species errs by itself.
 * @param changeSeMm of the front alone, mm
 * @param openingChangeMm what the opening does, mm
 * @param lagMm 1 % moisture content as movement of the front, mm
 */
export function relativeUncertaintyMm(
  { surround, isVeneered }: GapInput,
  changeSeMm: number,
  openingChangeMm: number,
  lagMm: number,
): number {
  if (surround?.kind !== 'solid') return changeSeMm;
  const isSameStock = !surround.species && !surround.rings && !isVeneered;
  if (isSameStock) return lagMm;
  const { coefficientRelative, formulaRelative } = movementUncertainty;
  const openingSeMm = openingChangeMm * Math.hypot(coefficientRelative, formulaRelative);
  return Math.hypot(changeSeMm, openingSeMm, lagMm);
}
