import type { Progress } from '../progress.js';
import type { Cue } from '../results/visibilityResult.js';
import type { CutLines } from './cutLines.js';
import type { ForecastLines } from './forecastLines.js';
import { reachOfCut } from './forecastLines.js';
import { jointByAngle } from './jointByAngle.js';
import { ripIsLeftOut } from './leftOutParts.js';
import { segmentVisibility } from './segmentVisibility.js';

/** What one rip would cost, by picture and by angle. */
export interface RipCost {
  /** Middle of what is lost, mm from the top. */
  readonly yMm: number;
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly vByAngle: number | null;
  /** It runs through an area that was left out; what it shows there is not in `v`. */
  readonly leftOut?: true;
}

/** Nearer to the panel's edge than this there is too little wood to read, mm. */
export const leastEdgeMm = 5;

/** Spacing of the rips that are tried, mm: the boards' own lines lie on the same grid. */
export const ripStepMm = 2;

/**
 * The cost of one rip at every height of the panel.
 *
 * Upper edges, lower edges and the boards' own lines lie on two grids of lines that all rips
 * share, so each line is read once.
 *
 * @param lossMm width lost: kerf and dressing.
 */
export function ripCurve(lines: ForecastLines, lossMm: number, progress?: Progress): RipCost[] {
  const first = Math.ceil(leastEdgeMm / ripStepMm) * ripStepMm;
  const roomMm = lines.heightMm - leastEdgeMm - lossMm - first;
  const count = Math.floor(roomMm / ripStepMm + 1e-9) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    if (i % 16 === 0) progress?.(i / count, 'trying every rip');
    const etaMm = first + i * ripStepMm;
    const cost = ripCost(lines.rip, etaMm, lossMm, lines.heightMm);
    return ripIsLeftOut(lines, etaMm, etaMm + lossMm) ? { ...cost, leftOut: true } : cost;
  });
}

/** @param etaAMm lower edge of the upper piece, mm from the top. */
export function ripCost(rip: CutLines, etaAMm: number, lossMm: number, heightMm: number): RipCost {
  const etaBMm = etaAMm + lossMm;
  const joint = rip.joint(etaAMm, etaBMm, 0);
  const own = rip.own(etaAMm, etaBMm, reachOfCut(etaAMm, etaBMm, heightMm));
  const whole = [0, Number.POSITIVE_INFINITY] as const;
  return {
    yMm: etaAMm + lossMm / 2,
    ...segmentVisibility(joint.sums, own, ...whole),
    vByAngle: jointByAngle(joint, own, lossMm, 0, rip.distanceMm).v,
  };
}
