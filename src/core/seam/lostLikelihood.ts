import { middleDirectionRad } from '../geometry/middleDirectionRad.js';
import type { LineMeasures } from './lineMeasures.js';
import type { LostProfiles } from './lostProfiles.js';
import { endOfPart } from './lostSummary.js';

/** Student's law with 4 degrees of freedom: a knot or a fleck must not decide. */
const freedom = 4;
/**
 * Share of the two sides' errors that counts for their mean: 0.5 for errors of their own; both lean
 * towards the fibre, and the lines that meet lean with them. Chosen on drawn rips (seeds 700 to 735).
 */
const untied = 0.125;
/** What a misread direction adds even where the windows agree, rad (0.2 deg). */
const leastSeRad = 0.2 * (Math.PI / 180);
/** Mean of (freedom + 1) / 2 ln(1 + z^2 / freedom) of a standard normal z (numerical integral). */
const unmetCost = 0.48;

/** Wood between two nodes of the grid that is weighed, along the joint and across it, mm. */
export interface GridSteps {
  readonly stepMm: number;
  readonly slideStepMm: number;
}

/**
 * How much of the lines' variance stays open at every place: 1 - exp(-phi^2 / 2), phi the phase error
 * of lines s apart,
 *   phi^2 = (2 pi / s)^2 [ missed (g se / sin theta)^2 + ((dg cos theta)^2 + (du sin theta)^2) / 12 ]
 * first because the direction is not known well enough to carry a line over the way g / sin theta,
 * then because the pair lies between nodes of the grid, dg and du apart.
 *
 * @param missed share of the directions' stated variance by which they are off, 0..1.
 * @returns 0 (the line's far end is known) to 1 per sample of the profiles.
 */
export function openVariance(
  { fieldA, fieldB }: LineMeasures,
  profiles: LostProfiles,
  gapMm: number,
  spacingMm: number,
  missed: number,
  grid: GridSteps,
): Float64Array {
  const last = fieldA.angleRad.length - 1;
  return profiles.a.map((_, n) => {
    const i = Math.min(last, ((n + 0.5) * profiles.stepMm) / fieldA.stepMm) | 0;
    const [a, b] = [fieldA.angleRad[i], fieldB.angleRad[i]];
    const middle = middleDirectionRad(a, b);
    const se = Math.hypot(
      untied * Math.hypot(fieldA.angleSeRad[i], fieldB.angleSeRad[i]),
      leastSeRad,
    );
    const sin = Math.max(1e-3, Math.abs(Math.sin(middle)));
    const carried = missed * ((gapMm * se) / sin) ** 2;
    const betweenNodes =
      ((grid.stepMm * Math.cos(middle)) ** 2 + (grid.slideStepMm * sin) ** 2) / 12;
    return 1 - Math.exp((-((2 * Math.PI) ** 2) * (carried + betweenNodes)) / (2 * spacingMm ** 2));
  });
}

/** What is expected of every place after a gap: half the log of its variance, and its inverse scale. */
export interface Expected {
  readonly halfLog: Float64Array;
  readonly perSquare: Float64Array;
}

/**
 * The variance v = V (D0 + (1 - D0) open) of every place as `meeting` uses it.
 *
 * @param open from `openVariance`. @param usualDiscord D0 of lines with no seam, 0..1.
 */
export function expected(
  { variance }: LostProfiles,
  open: Float64Array,
  usualDiscord: number,
): Expected {
  const v = open.map((share) => variance * (usualDiscord + (1 - usualDiscord) * share));
  return { halfLog: v.map((x) => 0.5 * Math.log(x)), perSquare: v.map((x) => 1 / (x * freedom)) };
}

/**
 * Weighs one pair (gap, slide): every place counts by the variance expected of it and by
 * Student's law; wood carried beyond the joint's ends counts as
 * wood that has nothing to say, so that a wide gap is neither preferred nor ruled out for it.
 *
 * Directions are off together over a stretch of grain, and width and slide take that up: straight
 * lines meet as well after a wide gap as after none. Each part of the joint is therefore weighed under
 * every expectation given, all as likely, and its likelihood is their mean.
 *
 * @param carried side B carried through the gap. @param slideSteps slide in samples.
 * @param wants from `expected`.
 * @param logs receives the log likelihood of each part of the joint (`partsOfLine`).
 * @returns the share of the variance that is not explained; NaN when less than half of the wood meets.
 */
export function meeting(
  profiles: LostProfiles,
  carried: Float64Array,
  slideSteps: number,
  wants: readonly Expected[],
  logs: Float64Array,
): number {
  const { a, weight, witnesses, variance: total } = profiles;
  const whole = Math.floor(slideSteps);
  const part = slideSteps - whole;
  const n = a.length;
  const unmet = 0.5 * Math.log(total) + unmetCost;
  let met = 0;
  let rr = 0;
  let aa = 0;
  let bb = 0;
  for (let k = 0, i = 0; k < logs.length; k++) {
    const each = wants.map(() => 0);
    for (const end = endOfPart(k, n); i < end; i++) {
      const w = weight[i];
      if (w === 0) continue;
      const at = i + whole;
      const va = at >= 0 && at + 1 < n ? a[at] + part * (a[at + 1] - a[at]) : Number.NaN;
      const r = va - carried[i];
      if (Number.isNaN(r)) {
        for (let t = 0; t < each.length; t++) each[t] -= w * unmet;
        continue;
      }
      for (let t = 0; t < each.length; t++) {
        const { halfLog, perSquare } = wants[t];
        each[t] -= w * (halfLog[i] + ((freedom + 1) / 2) * Math.log(1 + r * r * perSquare[i]));
      }
      met += w;
      rr += w * r * r;
      aa += w * va * va;
      bb += w * carried[i] * carried[i];
    }
    logs[k] = logMeanExp(each);
  }
  return met < 0.5 * witnesses ? Number.NaN : rr / (aa + bb + 1e-12);
}

function logMeanExp(logs: readonly number[]): number {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0) / logs.length);
}
