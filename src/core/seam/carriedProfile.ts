import { sampleBilinear } from '../image/sampleBilinear.js';
import type { SeamStrip } from './seamStrip.js';
import type { SideAngles } from './sideField.js';

/** How far the wood beside a line is read, mm. */
export interface CarryReach {
  /** Nearest depth: clear of the glue line and of the lens blur. */
  readonly nearMm: number;
  readonly farMm: number;
  /** Longest way along the grain: its error grows with the way. */
  readonly wayMm: number;
}

/** Wood counts as exp(-way / fading), this share of the longest way. */
export const fadingShare = 0.5;

export const defaultCarryReach: CarryReach = { nearMm: 0.5, farMm: 2.2, wayMm: 26 };

/** What one side says at the line itself; NaN where no grain line reaches it. */
export interface CarriedProfile {
  readonly stepMm: number;
  readonly value: Float64Array;
}

/** One step along the grain into the board, for every place of the line. */
interface Steps {
  /** Length of the step and its way into the board, mm. */
  readonly way: Float64Array;
  readonly deep: Float64Array;
  /** Its way along the line, in places of the profile. */
  readonly along: Float64Array;
  /** How much less the wood at its end counts. */
  readonly fading: Float64Array;
}

const longestStepMm = 1;
const deepestStepMm = 0.3;

/** Direction at xi by linear interpolation of the double angle's neighbours. */
function directionAt(field: SideAngles, xiMm: number): number {
  const t = Math.min(field.angleRad.length - 1, Math.max(0, xiMm / field.stepMm - 0.5));
  const i = Math.min(field.angleRad.length - 2, t | 0);
  if (i < 0) return field.angleRad[0];
  let turn = field.angleRad[i + 1] - field.angleRad[i];
  if (turn > Math.PI / 2) turn -= Math.PI;
  if (turn < -Math.PI / 2) turn += Math.PI;
  return field.angleRad[i] + (t - i) * turn;
}

function stepsInto(
  field: SideAngles,
  side: -1 | 1,
  count: number,
  stepMm: number,
  wayMm: number,
): Steps {
  const row = () => new Float64Array(count);
  const steps = { way: row(), deep: row(), along: row(), fading: row() };
  const fadingOf = (mm: number) => Math.exp(-mm / (fadingShare * wayMm));
  const longestFading = fadingOf(longestStepMm);
  for (let n = 0; n < count; n++) {
    const angle = directionAt(field, (n + 0.5) * stepMm);
    const sin = Math.sin(angle) || 1e-9;
    const way = Math.min(longestStepMm, deepestStepMm / Math.abs(sin));
    steps.way[n] = way;
    steps.along[n] = ((sin * side > 0 ? way : -way) * Math.cos(angle)) / stepMm;
    steps.deep[n] = way * Math.abs(sin);
    steps.fading[n] = way === longestStepMm ? longestFading : fadingOf(way);
  }
  return steps;
}

/**
 * Carries the wood of one side along its own grain to a line: the profile that this board shows
 * at the joint, whatever the other board does.
 *
 * From each xi the grain line is followed into the board in steps of half a millimetre of depth
 * or of way, whichever is shorter; readings between nearMm and farMm deep are averaged, the near
 * ones weighing most.
 *
 * @param etaMm where the line runs in the strip. @param side -1 for A, +1 for B.
 * @param stepMm spacing of the profile, default 0.25.
 */
export function carriedProfile(
  strip: SeamStrip,
  field: SideAngles,
  etaMm: number,
  side: -1 | 1,
  reach: CarryReach = defaultCarryReach,
  stepMm = 0.25,
): CarriedProfile {
  const { plane, pxPerMm, reachAMm } = strip;
  const { nearMm, farMm, wayMm } = reach;
  const lengthMm = plane.width / pxPerMm;
  const value = new Float64Array(Math.floor(lengthMm / stepMm));
  const { way, along, deep, fading } = stepsInto(field, side, value.length, stepMm, wayMm);
  const last = value.length - 1;
  const end = lengthMm / stepMm;
  const stepPx = stepMm * pxPerMm;
  const linePx = (etaMm + reachAMm) * pxPerMm - 0.5;
  const deeperPx = side * pxPerMm;
  for (let n = 0; n < value.length; n++) {
    let place = n + 0.5;
    let depth = 0;
    let gone = 0;
    let sum = 0;
    let weight = 0;
    let w = 1;
    while (depth < farMm && gone < wayMm) {
      const i = Math.min(last, place | 0);
      place += along[i];
      depth += deep[i];
      gone += way[i];
      w *= fading[i];
      if (place < 0 || place > end) break;
      if (depth < nearMm) continue;
      sum += w * sampleBilinear(plane, place * stepPx - 0.5, linePx + deeperPx * depth);
      weight += w;
    }
    value[n] = weight > 0 ? sum / weight : Number.NaN;
  }
  return { stepMm, value };
}
