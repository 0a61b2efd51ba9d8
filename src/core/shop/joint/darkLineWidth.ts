import { resolvedPx } from './resolvedPx.js';

/** A dark line in a profile. */
export interface DarkLine {
  /** Missing light as width of a perfectly black line, px. */
  readonly blackWidthPx: number;
  /** Full width at half depth, px. */
  readonly halfWidthPx: number;
  /** Light at its darkest against the wood beside it, 0 to 1. */
  readonly floorRatio: number;
}

const noLine: DarkLine = { blackWidthPx: 0, halfWidthPx: 0, floorRatio: 1 };
/** A line that shows its floor and sends back more than this share of the wood's light is no gap. */
const brightestFloor = 0.5;
/** Half the width over which a sharp dip stands out from its surroundings, px. */
const sharpPx = 3;

/**
 * The line near the middle of a profile that swallows most light.
 * A gap swallows light: the light missing against the wood beside it, divided by that wood's light,
 * is the gap's width if the gap is black; blur spreads it but keeps its sum. The wood's own lines
 * are wide and not dark: wide lines with a bright floor do not count.
 * @param profile luminance at even steps, from `crossProfile`
 * @param stepPx distance of samples, px
 * @param searchPx how far from the middle the line may lie, px
 * @param widestPx widest line, px
 */
export function darkLineWidth(
  profile: Float64Array,
  stepPx: number,
  searchPx: number,
  widestPx: number,
): DarkLine {
  const middle = (profile.length - 1) / 2;
  const search = Math.round(searchPx / stepPx);
  const sharp = Math.round(sharpPx / stepPx);
  const dip = (i: number) => profile[i]! - (profile[i - sharp]! + profile[i + sharp]!) / 2;
  let darkest = middle;
  let sharpest = middle;
  for (let i = middle - search; i <= middle + search; i++) {
    if (profile[i]! < profile[darkest]!) darkest = i;
    if (dip(i) < dip(sharpest)) sharpest = i;
  }
  const lines = [darkest, sharpest].map((at) => lineAt(profile, at, stepPx, widestPx));
  return lines[0]!.blackWidthPx >= lines[1]!.blackWidthPx ? lines[0]! : lines[1]!;
}

/** Blur reaches this far beyond the half-depth crossing, px; then comes a stretch of plain wood. */
const tailPx = 2.5;
const plainPx = 2;

/**
 * The line round a dark place, against the wood right beside it: first against the whole profile,
 * then twice against the levels found left and right of the line itself.
 */
function lineAt(profile: Float64Array, at: number, stepPx: number, widestPx: number): DarkLine {
  const reach = Math.round((1.1 * widestPx) / stepPx);
  const tail = Math.round(tailPx / stepPx);
  const plain = Math.round(plainPx / stepPx);
  let levels: readonly [number, number] = [median(profile), median(profile)];
  let edges: readonly [number, number] = [at, at];
  for (let pass = 0; pass < 3; pass++) {
    const half = (profile[at]! + Math.min(...levels)) / 2;
    edges = [crossing(profile, at, -1, half, reach), crossing(profile, at, 1, half, reach)];
    levels = [
      meanOf(profile, edges[0] - tail - plain, edges[0] - tail),
      meanOf(profile, edges[1] + tail, edges[1] + tail + plain),
    ];
    if (profile[at]! >= Math.min(...levels)) return noLine;
  }
  const from = Math.max(0, edges[0] - tail);
  const to = Math.min(profile.length - 1, edges[1] + tail);
  let missing = 0;
  for (let i = from; i <= to; i++) {
    const level = levels[0] + ((levels[1] - levels[0]) * (i - from)) / (to - from);
    missing += (level - profile[i]!) * stepPx;
  }
  const beside = (levels[0] + levels[1]) / 2;
  const halfWidthPx = (edges[1] - edges[0]) * stepPx;
  const floorRatio = Math.max(0, profile[at]! / beside);
  if (halfWidthPx >= resolvedPx && floorRatio > brightestFloor) return noLine;
  return { blackWidthPx: Math.max(0, missing / beside), halfWidthPx, floorRatio };
}

function crossing(
  profile: Float64Array,
  at: number,
  way: 1 | -1,
  level: number,
  reach: number,
): number {
  let i = at;
  for (let k = 0; k < reach && profile[i]! < level; k++) {
    if (i + way < 0 || i + way >= profile.length) break;
    i += way;
  }
  return i;
}

function meanOf(profile: Float64Array, from: number, to: number): number {
  const first = Math.max(0, Math.min(from, profile.length - 1));
  const last = Math.max(first, Math.min(to, profile.length - 1));
  let sum = 0;
  for (let i = first; i <= last; i++) sum += profile[i]!;
  return sum / (last - first + 1);
}

function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? 0;
}
