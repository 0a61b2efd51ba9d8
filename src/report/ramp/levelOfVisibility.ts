import { type VisibilityLevel, visibilityRamp } from './visibilityRamp.js';

/**
 * The step of the scale that a visibility belongs to.
 * Below 0.5 disappears, to 1 only if told, to 2 if you look for it, to 4 shows, above jumps out.
 * @param v visibility, times over just visible; null when untold
 * @returns null for null
 */
export function levelOfVisibility(v: number | null): VisibilityLevel | null {
  if (v === null || Number.isNaN(v)) return null;
  if (v > 4) return visibilityRamp[4]!;
  return visibilityRamp.slice(0, 4).findLast((level) => v >= level.fromV) ?? visibilityRamp[0]!;
}
