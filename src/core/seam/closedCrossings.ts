import type { LineMm } from '../results/scoreResult.js';
import type { CarriedBlocks } from './carriedBlocks.js';
import { crossedAt } from './crossedAt.js';
import { type DarkSpan, darkSpans } from './darkSpans.js';
import type { SeamFrame } from './seamFrame.js';
import type { SeamStrip } from './seamStrip.js';
import { type SeamWood, sideBlocks } from './seamWood.js';

/** Side A's, side B's. */
type Sides = readonly (readonly DarkSpan[])[];

/**
 * The wood beside a seam with the dark of other joints painted over where they meet or cross it.
 *
 * An open reveal at the end of a rail joint is a black bar across the strip: read as wood, its edge
 * is a grain line at right angles. Each side is looked at by itself (a joint that ends on the seam
 * lies on one side only); the dark columns are filled from the wood to their left and right, and no
 * direction is read there.
 *
 * @param others the panel's other joints.
 */
export function closedCrossings(wood: SeamWood, others: readonly LineMm[]): SeamWood {
  const at = crossings(wood.frame, others);
  const sides = ([-1, 1] as const).map((side) => darkSpans(wood.strip, side, at));
  if (sides.every((spans) => spans.length === 0)) return wood;
  const painted = (strip: SeamStrip) => paintedOver(strip, sides);
  const strip = painted(wood.strip);
  const [lightness, aStar, bStar] = wood.lab.map(painted);
  const blocks = unread(sideBlocks(strip), strip.reachAMm, sides);
  return { ...wood, strip, blocks, lab: [lightness, aStar, bStar] };
}

/** The seam's ends, and where other joints cross it or end on it, mm along the seam. */
function crossings(frame: SeamFrame, others: readonly LineMm[]): number[] {
  const met = others.map((line) => crossedAt(frame, line)).filter((xi) => xi !== null);
  return [0, ...met, frame.lengthMm];
}

/** Painted columns have no grain: their gradient products count nothing. */
function unread(blocks: CarriedBlocks, reachAMm: number, sides: Sides): CarriedBlocks {
  for (const { row, from, to } of darkRuns(blocks, 1 / blocks.stepMm, reachAMm, sides)) {
    for (const plane of [blocks.jxx, blocks.jxy, blocks.jyy, blocks.uncarried])
      plane.fill(0, row + from, row + to);
  }
  return blocks;
}

function paintedOver(strip: SeamStrip, sides: Sides): SeamStrip {
  const { width, height } = strip.plane;
  const data = strip.plane.data.slice();
  for (const { row, from, to } of darkRuns(strip.plane, strip.pxPerMm, strip.reachAMm, sides)) {
    fill(data, row, from, to, width);
  }
  return { ...strip, plane: { width, height, data } };
}

/** Columns from..to of every row of a side's dark spans; `row` is where the row begins. */
function* darkRuns(
  { width, height }: { readonly width: number; readonly height: number },
  perMm: number,
  reachAMm: number,
  sides: Sides,
) {
  const seamRow = Math.round(reachAMm * perMm);
  for (const [k, spans] of sides.entries()) {
    const [top, bottom] = k === 0 ? [0, seamRow] : [seamRow, height];
    for (const { fromMm, toMm } of spans) {
      const from = Math.max(0, Math.floor(fromMm * perMm));
      const to = Math.min(width, Math.ceil(toMm * perMm));
      for (let j = top; j < bottom; j++) yield { row: j * width, from, to };
    }
  }
}

/** Columns from..to of one row, drawn straight from the wood on their left to that on their right. */
function fill(data: Float32Array, row: number, from: number, to: number, width: number): void {
  const left = from > 0 ? data[row + from - 1] : data[row + Math.min(to, width - 1)];
  const right = to < width ? data[row + to] : left;
  for (let i = from; i < to; i++) {
    data[row + i] = left + ((right - left) * (i - from + 1)) / (to - from + 1);
  }
}
