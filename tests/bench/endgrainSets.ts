import { createRandom } from '../../src/core/random/createRandom.js';
import type { EndGrainSpec } from '../../src/core/wood/endGrainSpec.js';
import type { WoodSetting } from '../../src/core/wood/woodSetting.js';

/** Where the pith of a drawn end lies. */
export type PithZone = 'inside' | 'near outside' | 'far outside';
export const pithZones: readonly PithZone[] = ['inside', 'near outside', 'far outside'];
export const woodSettings: readonly WoodSetting[] = ['ring-porous', 'diffuse-porous', 'softwood'];

/**
 * One end of 90 to 180 x 22 to 40 mm: pith inside it, 0.35 to 1 board widths from its middle, or 1
 * to 4 widths, in any direction.
 *
 * @param marked saw marks, stain and four cracks drawn in (each at full strength).
 */
export function drawnEnd(
  seed: number,
  setting: WoodSetting,
  zone: PithZone,
  marked: boolean,
): EndGrainSpec {
  const r = createRandom(seed * 7 + zone.length);
  const widthMm = r.uniform(90, 180);
  const thicknessMm = r.uniform(22, 40);
  const away = zone === 'near outside' ? r.uniform(0.35, 1) : r.uniform(1, 4);
  const angle = r.uniform(0, 2 * Math.PI);
  // Near piths keep clear of the end itself: half a width aside, or that far above or below.
  const stretch = zone === 'near outside' ? 1.3 : 1;
  const at =
    zone === 'inside'
      ? [r.uniform(0.15, 0.85) * widthMm, r.uniform(0.2, 0.8) * thicknessMm]
      : [
          widthMm / 2 + stretch * away * widthMm * Math.cos(angle),
          thicknessMm / 2 + away * widthMm * Math.sin(angle),
        ];
  return {
    board: {
      seed,
      setting,
      widthMm,
      thicknessMm,
      pithYMm: at[0]!,
      pithDepthMm: at[1]!,
      slopeInFaceDeg: r.normal(0, 1),
      slopeInDepthDeg: r.normal(0, 1),
    },
    ...(marked ? { sawMarks: 1, stain: 1, cracks: 4 } : {}),
  };
}
