import { findSpecies } from './findSpecies.js';
import { frontSpecies } from './frontSpecies.js';
import type { GapInput } from './gapInput.js';
import { tangentialShare } from './tangentialShare.js';
import { widthMovement } from './widthMovement.js';

/**
 * What the opening does across the grain while the wood goes from one moisture content to another.
 * A frame stays. A solid panel opens and closes like a piece of its own wood as wide as the
 * opening, because the end pieces that hold the rails apart are just that.
 * @returns mm, positive = the opening grows
 */
export function surroundMovement(input: GapInput, fromPercent: number, toPercent: number): number {
  const { surround, acrossMm } = input;
  if (surround?.kind !== 'solid') return 0;
  const species = surround.species
    ? findSpecies(surround.species)
    : frontSpecies({ ...input, isVeneered: false });
  const rings = surround.rings ?? input.rings ?? { kind: 'class', cut: 'flatsawn' };
  const share = tangentialShare(rings, acrossMm);
  return widthMovement(species, share, acrossMm, fromPercent, toPercent).changeMm;
}
