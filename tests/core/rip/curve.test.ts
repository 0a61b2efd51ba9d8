import { describe, expect, it } from 'vitest';
import { curveSummary, safestBest } from '../../../src/core/rip/curveSummary.js';
import { disagreements } from '../../../src/core/rip/disagreements.js';
import type { RipCost } from '../../../src/core/rip/ripCurve.js';

const curveOf = (vs: (number | null)[], byAngle: number[] = [], cue: RipCost['cue'] = 'break') =>
  vs.map((v, i): RipCost => ({ yMm: 10 + 2 * i, v, cue, vByAngle: byAngle[i] ?? v }));

describe('a rip curve as a whole', () => {
  it('gives the middle rip, the best one and the share that disappears', () => {
    const summary = curveSummary(curveOf([0.2, 3, 0.4, 1, 0.1]));
    expect(summary).toEqual({ vMedian: 0.4, vBest: 0.1, bestYMm: 18, disappears: 0.6 });
  });

  it('of rips alike takes the one with the widest quiet round it', () => {
    expect(safestBest(curveOf([0, 2, 0, 0, 0, 0, 0, 2]))?.yMm).toBe(18);
  });

  it('tells nothing where nothing is told', () => {
    expect(curveSummary(curveOf([null, null])).vMedian).toBeNull();
    expect(curveSummary([]).bestYMm).toBeNull();
  });
});

describe('picture against angle', () => {
  it('reports stretches that differ by more than a factor of two, with the cue', () => {
    const curve = curveOf([1, 3, 3, 3, 1], [1, 1, 1, 1, 1], 'colour');
    const [only, ...rest] = disagreements(curve);
    expect(rest).toEqual([]);
    expect(only).toMatchObject({ fromYMm: 12, toYMm: 16, v: 3, vByAngle: 1, cue: 'colour' });
    expect(only?.why).toContain('colour');
  });

  it('reports lines that meet better than foretold', () => {
    const [only] = disagreements(curveOf([0.2, 0.2, 0.2], [2, 2, 2]));
    expect(only).toMatchObject({ cue: null });
  });

  it('keeps still where both are below visible, or agree', () => {
    expect(
      disagreements(curveOf([0.1, 0.1, 0.1, 2, 2, 2], [0.9, 0.9, 0.9, 1.5, 1.5, 1.5])),
    ).toEqual([]);
  });
});
