import { type CarriedProfile, carriedProfile } from './carriedProfile.js';
import type { SeamWood } from './seamWood.js';
import { defaultSideWindow, type SideField, sideField } from './sideField.js';

/** One side of a line once it is read: all that a joint there asks of it. */
export interface ReadSide {
  /** Its grain beside the line. */
  readonly field: SideField;
  /** Its wood carried to the line. */
  readonly profile: CarriedProfile;
  /** Its colours, and where the line lies in them. */
  readonly lab: SeamWood['lab'];
  readonly etaMm: number;
}

/**
 * Reads one side of a line at eta = etaMm. Where it faces the seam at eta = 0, its window ends
 * before that.
 *
 * @param side -1 for side A (eta smaller), +1 for side B.
 */
export function readSide(wood: SeamWood, etaMm: number, side: -1 | 1): ReadSide {
  const facing = etaMm * side < 0;
  const window = facing
    ? { ...defaultSideWindow, deepestMm: Math.min(15, Math.abs(etaMm) - 1.2) }
    : defaultSideWindow;
  const field = sideField(wood.blocks, wood.strip.reachAMm, etaMm, side, window);
  const profile = carriedProfile(wood.strip, field, etaMm, side);
  return { field, profile, lab: wood.lab, etaMm };
}
