import { halfTurnRad } from '../../../geometry/halfTurnRad.js';
import { type CarryReach, carriedProfile } from '../../../seam/carriedProfile.js';
import type { SeamStrip } from '../../../seam/seamStrip.js';
import type { SeamWood } from '../../../seam/seamWood.js';
import { type SideWindow, sideAngles } from '../../../seam/sideField.js';
import { carriedLines } from './carriedLines.js';
import { resampled } from './resampled.js';
import { smoothed } from './smoothed.js';

/**
 * The figure along one edge of a board, one entry per millimetre of length: what runs on, or does
 * not, in the board that is laid against it.
 */
export interface EdgeFigure {
  /** Grain direction beside the edge. */
  readonly angleRad: Float64Array;
  /** How much the direction still turns on its way to the edge (extrapolated from deeper in). */
  readonly bendRad: Float64Array;
  /** L* of the 5 mm along the edge. */
  readonly lightness: Float64Array;
  /** Grain lines in the middle of the lost strip (`carriedLines`): log luminance, 1 to 25 mm. */
  readonly carried: readonly Float64Array[];
}

const near: SideWindow = { alongSigmaMm: 4, acrossSigmaMm: 4, clearMm: 1.2, deepestMm: 9 };
const far: SideWindow = { alongSigmaMm: 6, acrossSigmaMm: 30, clearMm: 8, deepestMm: 17 };
/** Middles of the two windows, mm from the edge. */
const nearAtMm = 4;
const farAtMm = 12.5;
const toneDepthMm = 5;
/** A fresh edge has no glue line: its very wood is read. */
const linesReach: CarryReach = { nearMm: 0.1, farMm: 1.2, wayMm: 26 };
/** Two readings to each millimetre: lines finer than that are smoothed away. */
const linesStepMm = 0.5;

/**
 * Reads the figure at the line eta = etaMm of a board.
 *
 * @param side -1 for the wood above the line, 1 for the wood below.
 * @param depthMm wood that there is on that side; with less than 17 mm no bend is read.
 * @param lostMm width that a joint at this edge has lost.
 */
export function edgeFigure(
  wood: SeamWood,
  etaMm: number,
  side: -1 | 1,
  depthMm: number,
  lostMm: number,
): EdgeFigure {
  const { blocks, strip } = wood;
  const count = Math.round(strip.plane.width / strip.pxPerMm);
  const here = sideAngles(blocks, strip.reachAMm, etaMm, side, near);
  const profile = carriedProfile(strip, here, etaMm, side, linesReach, linesStepMm);
  const angleRad = resampled(here.angleRad, count);
  const bendRad = new Float64Array(count);
  if (depthMm >= far.deepestMm) {
    const deeper = sideAngles(blocks, strip.reachAMm, etaMm, side, far);
    const deepRad = resampled(deeper.angleRad, count);
    const share = nearAtMm / (farAtMm - nearAtMm);
    for (let i = 0; i < count; i++) bendRad[i] = share * halfTurnRad(angleRad[i] - deepRad[i]);
  }
  const lines = resampled(profile.value, count);
  const [fine, slow] = [smoothed(lines, 1), smoothed(lines, 25)];
  return {
    angleRad,
    bendRad,
    lightness: edgeLightness(wood.lab[0], etaMm, side, count),
    carried: carriedLines(
      fine.map((v, i) => v - slow[i]),
      angleRad,
      side,
      lostMm,
    ),
  };
}

function edgeLightness(
  { plane, pxPerMm, reachAMm }: SeamStrip,
  etaMm: number,
  side: -1 | 1,
  count: number,
): Float64Array {
  const line = (reachAMm + etaMm) * pxPerMm;
  const rows = Math.max(1, Math.round(toneDepthMm * pxPerMm));
  const sums = new Float64Array(plane.width);
  for (let k = 0; k < rows; k++) {
    const wanted = side < 0 ? Math.floor(line) - 1 - k : Math.ceil(line) + k;
    const row = Math.max(0, Math.min(plane.height - 1, wanted));
    for (let x = 0; x < plane.width; x++) sums[x] += plane.data[row * plane.width + x] / rows;
  }
  return resampled(sums, count);
}
