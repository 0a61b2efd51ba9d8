import { acrossGrainCoordinate } from './acrossGrainCoordinate.js';
import { type BandPair, bandAmplitudes } from './bandAmplitudes.js';
import { type CarriedProfile, carriedProfile } from './carriedProfile.js';
import { colourSteps } from './colourSteps.js';
import { type GlueRidge, glueRidge } from './glueRidge.js';
import type { SeamWood } from './seamWood.js';
import { type SideField, sideField } from './sideField.js';

/** What one stretch of a line shows, before any eye or distance comes in. */
export interface WindowMeasures {
  /** Middle of the stretch, mm along the line. */
  readonly atMm: number;
  readonly angleARad: number;
  readonly angleBRad: number;
  readonly angleSeRad: number;
  readonly bands: readonly BandPair[];
  /** CIEDE2000 per band width of `colourBandsMm`. */
  readonly colourDeltaE: readonly number[];
  readonly ridge: GlueRidge;
}

/** All that is read along one line, seam or not. */
export interface LineMeasures {
  readonly etaMm: number;
  readonly windowMm: number;
  readonly windows: readonly WindowMeasures[];
  readonly fieldA: SideField;
  readonly fieldB: SideField;
  readonly profileA: CarriedProfile;
  readonly profileB: CarriedProfile;
  /** Across-grain coordinate of the profile samples, mm. */
  readonly u: Float64Array;
}

/**
 * Reads a line at eta = etaMm: both sides' grain, what each carries to the line, colour and glue.
 * The seam itself and lines of the same board with no seam go through this same function.
 *
 * @param windowMm length of a stretch, mm (a degree of visual angle).
 */
export function lineMeasures(wood: SeamWood, etaMm: number, windowMm: number): LineMeasures {
  const { strip, blocks } = wood;
  const fieldA = sideField(blocks, strip.reachAMm, etaMm, -1);
  const fieldB = sideField(blocks, strip.reachAMm, etaMm, 1);
  const profileA = carriedProfile(strip, fieldA, etaMm, -1);
  const profileB = carriedProfile(strip, fieldB, etaMm, 1);
  const u = acrossGrainCoordinate(fieldA, fieldB, profileA.value.length, profileA.stepMm);
  const lengthMm = strip.plane.width / strip.pxPerMm;
  const count = Math.max(1, Math.round(lengthMm / windowMm));
  const windows = Array.from({ length: count }, (_, k) => {
    const from = (k * lengthMm) / count;
    const to = ((k + 1) * lengthMm) / count;
    const atMm = (from + to) / 2;
    const i = Math.min(fieldA.angleRad.length - 1, (atMm / fieldA.stepMm) | 0);
    const n = Math.min(u.length - 1, (atMm / profileA.stepMm) | 0);
    return {
      atMm,
      angleARad: fieldA.angleRad[i],
      angleBRad: fieldB.angleRad[i],
      angleSeRad: Math.hypot(fieldA.angleSeRad[i], fieldB.angleSeRad[i]),
      bands: bandAmplitudes(profileA.value, profileB.value, u, u[n]),
      colourDeltaE: colourSteps(wood, etaMm, from, to),
      ridge: glueRidge(strip, etaMm, from, to),
    };
  });
  return { etaMm, windowMm, windows, fieldA, fieldB, profileA, profileB, u };
}
