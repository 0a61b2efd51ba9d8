import { cubicMean } from '../visibility/cubicMean.js';
import type { LocalGrain } from './windowByAngle.js';
import { windowByAngle } from './windowByAngle.js';

/** A slide tried: cost is the sum of V^3 of everything that moves with it. */
export interface SlideChoice {
  readonly slideMm: number;
  readonly cost: number;
  readonly unslidCost: number;
}

/** Spacing of a first pass and of the last one, mm. */
const coarseMm = 1;
const fineMm = 0.25;
/** How many valleys of the first pass are looked at closely. */
const valleys = 4;
/** A valley must lie this much lower to be worth a longer slide. */
const worthIt = 0.95;

/** Weights of the places 3/4 mm to either side: no clamp holds a piece finer than that. */
const around = [1, 2, 3, 4, 3, 2, 1].map((weight) => weight / 16);
const reachOfAround = 3;
/** Proposals this near to the picture's choice are the same valley, mm. */
const sameValleyMm = 1.5;
/** Visibilities that differ by less are alike. */
const unseenV = 0.2;

/**
 * The slide within the spare length at which a joint costs least, by picture; of two alike the
 * shorter. Costs are averaged over 3/4 mm to either side: a lucky reading is no find.
 *
 * @param costAt cost by picture after a slide. @param spareMm longest slide either way.
 * @param alsoTry slides that the window equations propose.
 */
export function bestSlide(
  costAt: (slideMm: number) => number,
  spareMm: number,
  alsoTry: readonly number[],
): SlideChoice {
  const known = new Map<number, number>();
  const cost = (mm: number) => {
    const key = Math.round(mm / fineMm);
    const value = known.get(key) ?? costAt(key * fineMm);
    known.set(key, value);
    return value;
  };
  const smooth = (mm: number) =>
    around.reduce((sum, weight, i) => sum + weight * cost(mm + (i - reachOfAround) * fineMm), 0);
  const reach = Math.floor(spareMm / coarseMm) * coarseMm;
  const tries: number[] = [];
  for (let mm = -reach; mm <= reach; mm += coarseMm) tries.push(mm);
  const starts = [...tries, ...alsoTry]
    .filter((mm) => Math.abs(mm) <= spareMm)
    .sort((a, b) => cost(a) - cost(b))
    .slice(0, valleys);
  let best = { slideMm: 0, cost: smooth(0) };
  for (const start of starts) {
    for (let mm = start - coarseMm; mm <= start + coarseMm; mm += fineMm) {
      if (Math.abs(mm) > spareMm) continue;
      const value = smooth(mm);
      const better =
        Math.abs(mm) < Math.abs(best.slideMm)
          ? value <= best.cost / worthIt
          : value < best.cost * worthIt;
      if (better) best = { slideMm: fineMm * Math.round(mm / fineMm), cost: value };
    }
  }
  // What the picture cannot tell apart, the window equations may.
  for (const mm of alsoTry) {
    const near = Math.abs(mm - best.slideMm) <= sameValleyMm && Math.abs(mm) <= spareMm;
    if (!near || Math.cbrt(smooth(mm)) > Math.cbrt(best.cost) + unseenV) continue;
    best = { slideMm: fineMm * Math.round(mm / fineMm), cost: smooth(mm) };
    break;
  }
  return { ...best, unslidCost: Math.min(cost(0), smooth(0)) };
}

/**
 * The slide that the window equations ask for: delta_i = k cos(theta_i) - u sin(theta_i), each
 * stretch costing what the closed form gives. On even straight lines u = k cot(theta).
 *
 * @returns the lowest places of the closed form's cost within the spare length, best first.
 */
export function slidesByAngle(
  grain: readonly (LocalGrain | null)[],
  lossMm: number,
  spareMm: number,
  distanceMm: number,
): number[] {
  const steps = Math.floor(spareMm / fineMm);
  // At the panel's very ends the grain is read from one side only.
  const told = grain.length > 4 ? grain.slice(1, -1) : grain;
  const costs = Array.from({ length: 2 * steps + 1 }, (_, i) => {
    const slideMm = (i - steps) * fineMm;
    return cubicMean(told.map((one) => windowByAngle(one, lossMm, slideMm, distanceMm))) ?? 0;
  });
  return costs
    .map((cost, i) => ({ cost, slideMm: (i - steps) * fineMm, i }))
    .filter(({ cost, i }) => cost <= (costs[i - 1] ?? cost) && cost <= (costs[i + 1] ?? cost))
    .sort((a, b) => a.cost - b.cost || Math.abs(a.slideMm) - Math.abs(b.slideMm))
    .slice(0, valleys)
    .map(({ slideMm }) => slideMm);
}
