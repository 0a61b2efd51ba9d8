import { halfTurnRad } from '../geometry/halfTurnRad.js';
import { acrossGrainCoordinate } from './acrossGrainCoordinate.js';
import { type BandPair, bandReader } from './bandAmplitudes.js';
import type { CarriedProfile } from './carriedProfile.js';
import { type ColourStep, colourSteps } from './colourSteps.js';
import { type GlueRidge, glueRidge } from './glueRidge.js';
import { type ReadSide, readSide } from './readSide.js';
import type { SeamStrip } from './seamStrip.js';
import type { SeamWood } from './seamWood.js';
import type { SideField } from './sideField.js';
import { spacingRatios } from './spacingRatios.js';

/** What one stretch of a line shows, before any eye or distance comes in. */
export interface WindowMeasures {
  /** Middle of the stretch, mm along the line. */
  readonly atMm: number;
  readonly angleARad: number;
  readonly angleBRad: number;
  readonly angleSeRad: number;
  /** B less A as far as it lasts however deep the wood is looked at, rad. */
  readonly turnRad: number;
  /** A turn below this may be an error of the reading, rad: two standard errors. */
  readonly doubtRad: number;
  readonly bands: readonly BandPair[];
  /** The lines' spacing on B over A, as far as it keeps up along the joint; null if untold. */
  readonly spacingRatio: number | null;
  /** Step of colour for a band width, by its index in `colourBandsMm`. */
  readonly colourStep: (band: number) => ColourStep;
  readonly ridge: GlueRidge;
}

/** Standard errors that a turn must be beyond to be one. */
const errorsOfDoubt = 2;

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
 * Reads a line at eta = etaMm of a panel: both sides' grain, what each carries to the line, colour
 * and glue. The seam itself and lines of the same board with no seam go through this function.
 *
 * @param windowMm length of a stretch, mm (a degree of visual angle).
 */
export function lineMeasures(wood: SeamWood, etaMm: number, windowMm: number): LineMeasures {
  const [a, b] = [readSide(wood, etaMm, -1), readSide(wood, etaMm, 1)];
  return jointMeasures(a, b, windowMm, 0, wood.strip);
}

/**
 * Measures the joint that two edges make or would make: side A up to its line against side B from
 * its line on. Two lines of one board a kerf apart give the joint after ripping there, lines of
 * two boards the joint of a glue-up. A joint not yet glued is taken to have no glue line.
 *
 * @param slideMm how far side A is moved along the joint (+xi).
 * @param glued the wood in which both sides lie at one line, if they do.
 */
export function jointMeasures(
  a: ReadSide,
  b: ReadSide,
  windowMm: number,
  slideMm = 0,
  glued?: SeamStrip,
): LineMeasures {
  const { field: fieldB, profile: profileB } = b;
  const fieldA = movedField(a.field, slideMm);
  const profileA = movedProfile(a.profile, slideMm);
  const samples = Math.min(profileA.value.length, profileB.value.length);
  const u = acrossGrainCoordinate(fieldA, fieldB, samples, profileA.stepMm);
  const lengthMm = samples * profileA.stepMm;
  const count = Math.max(1, Math.round(lengthMm / windowMm));
  const bandsAt = bandReader(profileA.value, profileB.value, u);
  const stretches = Array.from({ length: count }, (_, k) => ({
    fromMm: (k * lengthMm) / count,
    toMm: ((k + 1) * lengthMm) / count,
  }));
  const stepOf = colourSteps(a, b, stretches, slideMm);
  const uAt = (mm: number) => u[Math.min(u.length - 1, (mm / profileA.stepMm) | 0)];
  const crossing = stretches.map(({ fromMm, toMm }) => ({
    bands: bandsAt(uAt((fromMm + toMm) / 2)),
    fromUMm: uAt(fromMm),
    toUMm: uAt(toMm),
  }));
  const ratios = spacingRatios(crossing);
  const windows = stretches.map(({ fromMm, toMm }, k) => {
    const atMm = (fromMm + toMm) / 2;
    const i =
      Math.min(fieldA.angleRad.length, fieldB.angleRad.length, 1 + atMm / fieldA.stepMm) - 1;
    const angleSeRad = Math.hypot(fieldA.angleSeRad[i | 0], fieldB.angleSeRad[i | 0]);
    return {
      atMm,
      angleARad: fieldA.angleRad[i | 0],
      angleBRad: fieldB.angleRad[i | 0],
      angleSeRad,
      doubtRad: errorsOfDoubt * angleSeRad,
      turnRad: lastingTurnRad(fieldA, fieldB, i | 0),
      bands: crossing[k].bands,
      spacingRatio: ratios[k],
      colourStep: (band: number) => stepOf(k, band),
      ridge: glued ? glueRidge(glued, a.etaMm, fromMm, toMm) : { areaMm: 0, peak: 0 },
    };
  });
  return { etaMm: a.etaMm, windowMm, windows, fieldA, fieldB, profileA, profileB, u };
}

/**
 * The least of the turns seen in near, middling and deep windows, 0 where they disagree about its
 * sense. Grain that bends on its way (the axis of a cathedral) turns more or less as one looks
 * deeper; grain cut and joined keeps its turn.
 */
function lastingTurnRad(a: SideField, b: SideField, i: number): number {
  const turns = [
    b.angleRad[i] - a.angleRad[i],
    ...a.scalesRad.map((angleRad, k) => b.scalesRad[k][i] - angleRad[i]),
  ].map(halfTurnRad);
  const sense = Math.sign(turns[0]);
  return turns.every((turn) => turn * sense > 0) ? sense * Math.min(...turns.map(Math.abs)) : 0;
}

function movedField(field: SideField, slideMm: number): SideField {
  const by = Math.round(slideMm / field.stepMm);
  if (by === 0) return field;
  return {
    stepMm: field.stepMm,
    angleRad: moved(field.angleRad, by, 'hold'),
    scalesRad: field.scalesRad.map((angleRad) => moved(angleRad, by, 'hold')),
    angleSeRad: moved(field.angleSeRad, by, 'hold'),
    coherence: moved(field.coherence, by, 'hold'),
    energy: moved(field.energy, by, 'hold'),
  };
}

function movedProfile(profile: CarriedProfile, slideMm: number): CarriedProfile {
  const by = Math.round(slideMm / profile.stepMm);
  return by === 0 ? profile : { stepMm: profile.stepMm, value: moved(profile.value, by, 'unread') };
}

/** Values moved by `by` places; what comes in from beyond the end is the end value, or unread. */
function moved(values: Float64Array, by: number, beyond: 'hold' | 'unread'): Float64Array {
  const n = values.length;
  const out = new Float64Array(n);
  const from = Math.min(n, Math.max(0, by));
  const to = Math.max(0, Math.min(n, n + by));
  if (from < to) out.set(values.subarray(from - by, to - by), from);
  out.fill(beyond === 'hold' ? values[0] : Number.NaN, 0, from);
  out.fill(beyond === 'hold' ? values[n - 1] : Number.NaN, to);
  return out;
}
