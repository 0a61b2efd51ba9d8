import { gaussianBlur } from '../../filter/gaussianBlur.js';
import { createPlane, type Plane } from '../../image/plane.js';
import { acrossRings, depthToPithMm, type RingFamily } from './ringFamily.js';

/** The fine detail of a picture at scattered points. */
export interface ScatteredLight {
  readonly xMm: Float32Array;
  readonly yMm: Float32Array;
  readonly value: Float32Array;
  readonly meanSquare: number;
  /** Middle of the points, and how far the farthest lies from it. */
  readonly middleXMm: number;
  readonly middleYMm: number;
  readonly reachMm: number;
}

const mostSamples = 24000;
const capAt = 2.5;

/**
 * Everything finer than `slowerMm` at points that follow no pattern.
 *
 * @param most number of points. @param withinMm only the middle part of that width and height.
 */
export function scatteredLight(
  plane: Plane,
  pxPerMm: number,
  slowerMm: number,
  most = mostSamples,
  withinMm = Number.POSITIVE_INFINITY,
): ScatteredLight {
  const part = middleOf(bandBelow(plane, slowerMm * pxPerMm), withinMm * pxPerMm);
  const { width, height, data: band, left, top } = part;
  const count = Math.min(most, band.length);
  const [xMm, yMm, value] = [0, 1, 2].map(() => new Float32Array(count));
  let sum = 0;
  for (let i = 0; i < count; i++) {
    // Golden-ratio steps through the picture come back to no row or column in step.
    const at = Math.floor(((i * 0.6180339887498949) % 1) * band.length);
    xMm[i] = (left + (at % width) + 0.5) / pxPerMm;
    yMm[i] = (top + Math.floor(at / width) + 0.5) / pxPerMm;
    value[i] = band[at];
    sum += band[at] ** 2;
  }
  const reachMm = Math.hypot(width, height) / pxPerMm / 2;
  const [middleXMm, middleYMm] = [(left + width / 2) / pxPerMm, (top + height / 2) / pxPerMm];
  const meanSquare = sum / Math.max(1, count);
  return { xMm, yMm, value, meanSquare, middleXMm, middleYMm, reachMm };
}

/** Share of the detail's variance that arcs explain, less what chance gives so many arcs. */
export function arcShare(light: ScatteredLight, arcs: RingFamily, stepMm: number): number {
  const { xMm, yMm, value, meanSquare, reachMm, middleXMm, middleYMm } = light;
  const bins = Math.ceil((2.2 * reachMm) / stepMm) + 2;
  const sums = new Float64Array(bins);
  const counts = new Float64Array(bins);
  const depthAt = depthToPithMm(arcs);
  const low = depthAt(middleXMm, middleYMm) - 1.05 * reachMm;
  for (let i = 0; i < value.length; i++) {
    const bin = Math.floor((depthAt(xMm[i], yMm[i]) - low) / stepMm);
    if (bin < 0 || bin >= bins) continue;
    sums[bin] += value[i];
    counts[bin]++;
  }
  let [explained, used, total] = [0, 0, 0];
  for (let bin = 0; bin < bins; bin++) {
    if (counts[bin] === 0) continue;
    explained += sums[bin] ** 2 / counts[bin];
    total += counts[bin];
    used++;
  }
  return (explained - used * meanSquare) / ((total || 1) * meanSquare || 1);
}

/**
 * Correlation of the profiles across the arcs taken at their two ends (the outer thirds of every
 * arc's length).
 */
export function endsAgree(light: ScatteredLight, arcs: RingFamily, stepMm: number): number {
  const { xMm, yMm, value, reachMm, middleXMm, middleYMm } = light;
  const bins = Math.ceil((2.2 * reachMm) / stepMm) + 2;
  const depthAt = depthToPithMm(arcs);
  const low = depthAt(middleXMm, middleYMm) - 1.05 * reachMm;
  const binOf = (i: number) => Math.floor((depthAt(xMm[i], yMm[i]) - low) / stepMm);
  const [nx, ny] = [Math.cos(arcs.normalRad), Math.sin(arcs.normalRad)];
  const alongOf = (i: number) => {
    const [vx, vy] = acrossRings(arcs, xMm[i], yMm[i]);
    return Math.atan2(nx * vy - ny * vx, nx * vx + ny * vy);
  };
  const least = new Float64Array(bins).fill(Number.POSITIVE_INFINITY);
  const most = new Float64Array(bins).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < value.length; i++) {
    const [bin, along] = [binOf(i), alongOf(i)];
    if (bin < 0 || bin >= bins) continue;
    if (along < least[bin]) least[bin] = along;
    if (along > most[bin]) most[bin] = along;
  }
  const sums = [new Float64Array(bins), new Float64Array(bins)];
  const counts = [new Float64Array(bins), new Float64Array(bins)];
  for (let i = 0; i < value.length; i++) {
    const bin = binOf(i);
    if (bin < 0 || bin >= bins) continue;
    const place = (alongOf(i) - least[bin]) / (most[bin] - least[bin] || 1);
    if (place > 1 / 3 && place < 2 / 3) continue;
    const end = place < 0.5 ? 0 : 1;
    sums[end][bin] += value[i];
    counts[end][bin]++;
  }
  let [ab, aa, bb] = [0, 0, 0];
  for (let bin = 0; bin < bins; bin++) {
    if (counts[0][bin] < leastCount || counts[1][bin] < leastCount) continue;
    const [a, b] = [sums[0][bin] / counts[0][bin], sums[1][bin] / counts[1][bin]];
    ab += a * b;
    aa += a * a;
    bb += b * b;
  }
  return ab / (Math.sqrt(aa * bb) || 1);
}

const leastCount = 12;

/** The middle of a plane, at most `withinPx` wide and high, and where it lay. */
function middleOf(plane: Plane, withinPx: number) {
  const width = Math.min(plane.width, Math.ceil(withinPx));
  const height = Math.min(plane.height, Math.ceil(withinPx));
  const [left, top] = [(plane.width - width) >> 1, (plane.height - height) >> 1];
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const from = (top + y) * plane.width + left;
    data.set(plane.data.subarray(from, from + width), y * width);
  }
  return { width, height, data, left, top };
}

/** What is finer than `slowerPx`, strong outliers (cracks, dirt) capped. */
export function bandBelow(plane: Plane, slowerPx: number): Plane {
  const slow = createPlane(plane.width, plane.height);
  gaussianBlur(plane, slowerPx, slow);
  const out = createPlane(plane.width, plane.height);
  for (let i = 0; i < out.data.length; i++) out.data[i] = plane.data[i] - slow.data[i];
  const cap = capAt * Math.sqrt(meanSquareOf(out.data));
  for (let i = 0; i < out.data.length; i++) {
    out.data[i] = Math.max(-cap, Math.min(cap, out.data[i]));
  }
  return out;
}

function meanSquareOf(data: Float32Array): number {
  let sum = 0;
  for (const value of data) sum += value * value;
  return sum / Math.max(1, data.length);
}
