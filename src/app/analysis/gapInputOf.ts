import type { GapInput } from '../../core/shop/movement/gapInput.js';
import { parseClimate } from '../../core/units/parseClimate.js';
import type { GapQuestion, Settings } from '../state/project.js';

/**
 * The season's question as the project keeps it, without the rings: those are the board's.
 * @throws SeamgrainError for air that cannot be read
 */
export function gapInputOf(gap: GapQuestion, settings: Settings): Omit<GapInput, 'rings'> {
  return {
    species: gap.species,
    acrossMm: settings.frontHeightMm,
    lengthMm: settings.frontWidthMm,
    distanceMm: settings.distanceMm,
    from: { kind: 'climate', climate: parseClimate(gap.shop) },
    to: { kind: 'climate', climate: parseClimate(gap.home) },
    surround: { kind: gap.surround },
    revealMm: gap.revealMm,
    place: gap.place,
    isVeneered: settings.frontWood === 'veneered',
  };
}
