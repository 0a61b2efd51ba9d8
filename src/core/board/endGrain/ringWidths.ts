import type { Plane } from '../../image/plane.js';
import { sampleBilinear } from '../../image/sampleBilinear.js';
import type { FittedRings } from './fitRings.js';
import { ringDirection } from './ringDirection.js';
import { acrossRings } from './ringFamily.js';

/** Median and tenths of the ring widths met along the middle of an end; null where none is read. */
export interface RingWidths {
  readonly median: number | null;
  readonly p10: number | null;
  readonly p90: number | null;
}

const stationMm = 4;
const stepMm = 0.1;
const halfMm = 15;
/** Along the ring to either side, to average vessels and scratches out. */
const alongMm = 3;
const alongSteps = 12;
const turnShare = 1.3;
const fewest = 5;

/**
 * Ring widths from profiles across the rings at places along mid-thickness, each averaged 3 mm to
 * either side along the ring's own circle. A ring ends where the profile has dipped and come back
 * by `turnShare` times its usual swing; its width is the distance between dips.
 *
 * @param plane the end with slow changes removed.
 * @returns nulls with fewer than five rings.
 */
export function ringWidths(plane: Plane, pxPerMm: number, rings: FittedRings): RingWidths {
  const widths: number[] = [];
  const yMm = plane.height / pxPerMm / 2;
  for (let xMm = stationMm; xMm < plane.width / pxPerMm - stationMm; xMm += stationMm) {
    widths.push(...distancesBetweenDips(profileAt(plane, pxPerMm, rings, xMm, yMm)));
  }
  if (widths.length < fewest) return { median: null, p10: null, p90: null };
  widths.sort((a, b) => a - b);
  const at = (q: number) => widths[Math.floor(q * (widths.length - 1))] ?? null;
  return { median: at(0.5), p10: at(0.1), p90: at(0.9) };
}

/** The light along the line across the rings through a place; only what lies on the end. */
function profileAt(
  plane: Plane,
  pxPerMm: number,
  rings: FittedRings,
  xMm: number,
  yMm: number,
): number[] {
  const { acrossRad } = ringDirection(rings, xMm, yMm);
  const [ux, uy] = [Math.cos(acrossRad), Math.sin(acrossRad)];
  const [vx, vy] = acrossRings(rings.family, xMm, yMm);
  // A ring bends towards the pith by t^2 / 2R, t along it.
  const bend = rings.family.curvature / (Math.hypot(vx, vy) + 1e-9);
  const profile: number[] = [];
  for (let s = -halfMm; s <= halfMm; s += stepMm) {
    let [sum, count] = [0, 0];
    for (let k = 0; k <= alongSteps; k++) {
      const t = alongMm * ((2 * k) / alongSteps - 1);
      const across = s + 0.5 * bend * t * t;
      const x = (xMm + across * ux - t * uy) * pxPerMm - 0.5;
      const y = (yMm + across * uy + t * ux) * pxPerMm - 0.5;
      if (x < 0 || y < 0 || x > plane.width - 1 || y > plane.height - 1) continue;
      sum += sampleBilinear(plane, x, y);
      count++;
    }
    if (count > alongSteps / 2) profile.push(sum / count);
  }
  return profile;
}

/** Distances between the dips of a profile, mm. */
function distancesBetweenDips(profile: readonly number[]): number[] {
  const usual = Math.sqrt(profile.reduce((sum, v) => sum + v * v, 0) / Math.max(1, profile.length));
  const turn = turnShare * usual;
  const dips: number[] = [];
  let [low, lowAt, high, falling] = [Infinity, 0, -Infinity, false];
  for (const [k, value] of profile.entries()) {
    if (!falling) {
      if (value > high) high = value;
      else if (value < high - turn) [falling, low, lowAt] = [true, value, k];
      continue;
    }
    if (value < low) [low, lowAt] = [value, k];
    else if (value > low + turn) {
      dips.push(lowAt);
      [falling, high] = [false, value];
    }
  }
  return dips.slice(1).map((at, k) => (at - dips[k]) * stepMm);
}
