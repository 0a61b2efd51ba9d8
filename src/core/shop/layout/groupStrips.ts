import type Fraction from 'fraction.js';
import { SeamgrainError } from '../../errors.js';
import { exactMm } from '../../units/exactMm.js';
import type { Span } from './divideAxis.js';
import type { FrontPlace } from './layoutInput.js';

/** Fronts that one strip yields: the strip as ripped, the openings along it. */
export interface StripPlan {
  readonly y: Span;
  readonly openings: readonly Span[];
}

/** What comes off later, mm: from each long edge of the strip, each long edge and end of a front. */
export interface Allowances {
  readonly dress: Fraction;
  readonly trim: Fraction;
  readonly trimEnds: Fraction;
}

/**
 * Gathers fronts into strips: fronts of one height at one y lie in one strip.
 * A strip as ripped is front + trim + dressing on both long edges; an opening is front + trim.
 * @param fronts finished fronts on the panel
 * @returns strips from top to bottom, openings from left to right
 */
export function groupStrips(fronts: readonly FrontPlace[], allowances: Allowances): StripPlan[] {
  if (fronts.length === 0) {
    throw new SeamgrainError('wrongUsage', 'no front to cut', 'give its size and place');
  }
  const groups = new Map<string, FrontPlace[]>();
  for (const front of fronts) {
    const key = `${exactMm(front.yMm).toFraction()}|${exactMm(front.widthMm).toFraction()}`;
    groups.set(key, [...(groups.get(key) ?? []), front]);
  }
  return [...groups.values()]
    .map((group) => stripOf(group, allowances))
    .sort((a, b) => a.y.from.compare(b.y.from));
}

function stripOf(group: readonly FrontPlace[], { dress, trim, trimEnds }: Allowances): StripPlan {
  const { yMm, widthMm } = group[0]!;
  const allowance = trim.add(dress);
  const top = exactMm(yMm);
  const openings = group
    .map(({ xMm, lengthMm }) => ({
      from: exactMm(xMm).sub(trimEnds),
      to: exactMm(xMm).add(exactMm(lengthMm)).add(trimEnds),
    }))
    .sort((a, b) => a.from.compare(b.from));
  return {
    y: { from: top.sub(allowance), to: top.add(exactMm(widthMm)).add(allowance) },
    openings,
  };
}
