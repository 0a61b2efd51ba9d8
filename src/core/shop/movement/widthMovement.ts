import { coefficientFromShrinkage } from './coefficientFromShrinkage.js';
import { movementMm } from './movementMm.js';
import { shrinkageFromCoefficient } from './shrinkageFromCoefficient.js';
import { wideMovementMm } from './wideMovementMm.js';
import type { WoodSpecies } from './woodSpecies.js';

/** Movement of one board across its width. */
export interface WidthMovement {
  readonly changeMm: number;
  /** Effective, per 1 % moisture content, fraction of the initial dimension. */
  readonly coefficient: number;
  readonly equation: '13-2' | '13-3';
}

/**
 * Change of a board's width between two moisture contents, radial and tangential parts mixed.
 * Inside 6 to 14 % by Eq. (13-2) with Table 13-5, otherwise by Eq. (13-3) with the shrinkage that
 * the table row stands for.
 * @param share tangential share of the width, from `tangentialShare`
 */
export function widthMovement(
  species: WoodSpecies,
  share: number,
  acrossMm: number,
  fromPercent: number,
  toPercent: number,
): WidthMovement {
  const mix = (tangential: number, radial: number) => share * tangential + (1 - share) * radial;
  const { coefficient, fibreSaturationPercent: f } = species;
  const isInside = [fromPercent, toPercent].every((mc) => mc >= 6 && mc <= 14);
  if (isInside) {
    const mixed = mix(coefficient.tangential, coefficient.radial);
    const changeMm = movementMm(acrossMm, mixed, fromPercent, toPercent);
    return { changeMm, coefficient: mixed, equation: '13-2' };
  }
  const { tangential, radial } = wideShrinkage(species);
  const change = (shrinkage: number, to: number) =>
    wideMovementMm(acrossMm, shrinkage, fromPercent, to, f);
  // The slope does not depend on the end point, so it may be taken over one percent.
  const from = Math.min(fromPercent, f);
  const unit = (shrinkage: number) => wideMovementMm(1, shrinkage, from, from - 1, f) * -1;
  return {
    changeMm: mix(change(tangential, toPercent), change(radial, toPercent)),
    coefficient: mix(unit(tangential), unit(radial)),
    equation: '13-3',
  };
}

/** Printed shrinkage where the table's row rests on it, else the shrinkage behind the row. */
function wideShrinkage(species: WoodSpecies): { tangential: number; radial: number } {
  const { shrinkagePercent: s, coefficient: c, fibreSaturationPercent: f } = species;
  const choose = (shrinkage: number, coefficient: number) =>
    Math.abs(coefficientFromShrinkage(shrinkage, f) - coefficient) < 1.5e-5
      ? shrinkage
      : shrinkageFromCoefficient(coefficient, f);
  return {
    tangential: choose(s.tangential, c.tangential),
    radial: choose(s.radial, c.radial),
  };
}
