import { cutClassAngles, type RingAngles } from './ringAngles.js';
import { tangentialShare } from './tangentialShare.js';
import { widthMovement } from './widthMovement.js';
import type { WoodSpecies } from './woodSpecies.js';

/**
 * The width's coefficient at the two ends of its cut class, smaller first.
 * @param rings null where the rings do not matter (a stable core)
 * @param share tangential share that is used when the angle is known
 */
export function coefficientRange(
  species: WoodSpecies,
  rings: RingAngles | null,
  share: number,
  fromPercent: number,
  toPercent: number,
): [number, number] {
  const at = (part: number) => widthMovement(species, part, 1, fromPercent, toPercent).coefficient;
  if (rings?.kind !== 'class') return [at(share), at(share)];
  const [least, most] = cutClassAngles[rings.cut].rangeDeg
    .map((angleDeg) => at(tangentialShare({ kind: 'angle', angleDeg }, 1)))
    .sort((a, b) => a - b) as [number, number];
  return [least, most];
}
