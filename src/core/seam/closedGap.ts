import type { SeamResult } from '../results/scoreResult.js';
import type { SeamStrip } from './seamStrip.js';
import { type SeamWood, sideBlocks } from './seamWood.js';

/** A line this dark and wide is no glue. */
const openContrast = 0.5;
const openWidthMm = 0.4;
/** Wood darker than usual by this in log luminance belongs to a gap, no farther than this from its line. */
export const darkContrast = 0.3;
export const farthestMm = 6;
/** Blur of the lens beside the dark, mm. */
const blurMm = 0.3;

/** Whether what was read as a glue line is an open gap or a reveal. */
export const isOpenGap = ({ widthMm, contrast }: SeamResult['glueLine']): boolean =>
  (contrast ?? 0) > openContrast && (widthMm ?? 0) > openWidthMm;

/**
 * The wood beside an open gap with the dark painted over: every row of the gap shows the nearest
 * wood of its own side, so that neither its darkness nor its edges are read as grain.
 */
export function closedGap(wood: SeamWood): SeamWood {
  const { aMm, bMm } = darkReach(wood.strip);
  const strip = paintedOver(wood.strip, aMm, bMm);
  const [lightness, aStar, bStar] = wood.lab.map((plane) => paintedOver(plane, aMm, bMm));
  return { ...wood, strip, blocks: sideBlocks(strip), lab: [lightness, aStar, bStar] };
}

/** How far the dark reaches on either side of the seam, mm. */
function darkReach({ plane, pxPerMm, reachAMm }: SeamStrip): { aMm: number; bMm: number } {
  const { width, height, data } = plane;
  const means = Array.from({ length: height }, (_, j) => {
    let sum = 0;
    for (let i = j * width; i < (j + 1) * width; i++) sum += data[i];
    return sum / width;
  });
  const wood = [...means].sort((a, b) => a - b)[height >> 1];
  const dark = (j: number) => means[j] < wood - darkContrast;
  const seamRow = Math.round(reachAMm * pxPerMm);
  const most = Math.round(farthestMm * pxPerMm);
  let [a, b] = [0, 0];
  for (let k = 1; k <= most && seamRow - k >= 0; k++) if (dark(seamRow - k)) a = k;
  for (let k = 1; k <= most && seamRow + k <= height; k++) if (dark(seamRow + k - 1)) b = k;
  return { aMm: a / pxPerMm + blurMm, bMm: b / pxPerMm + blurMm };
}

function paintedOver(strip: SeamStrip, aMm: number, bMm: number): SeamStrip {
  const { width, height } = strip.plane;
  const data = strip.plane.data.slice();
  const seamRow = Math.round(strip.reachAMm * strip.pxPerMm);
  const first = Math.max(0, seamRow - Math.ceil(aMm * strip.pxPerMm));
  const last = Math.min(height, seamRow + Math.ceil(bMm * strip.pxPerMm));
  for (let j = first; j < seamRow; j++) {
    const from = Math.max(0, first - 1);
    data.copyWithin(j * width, from * width, (from + 1) * width);
  }
  for (let j = seamRow; j < last; j++) {
    const from = Math.min(height - 1, last);
    data.copyWithin(j * width, from * width, (from + 1) * width);
  }
  return { ...strip, plane: { width, height, data } };
}
