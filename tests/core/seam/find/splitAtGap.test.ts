import { describe, expect, it } from 'vitest';
import type { FoundSeam } from '../../../../src/core/seam/find/foundSeam.js';
import { splitAtGap } from '../../../../src/core/seam/find/splitAtGap.js';
import { noisyMaps } from './noisyMaps.js';

/** 280 x 100 mm, an opening's reveal from 100 to 180 mm along at 50 mm down. */
const rect = { x0: 0, y0: 0, x1: 280, y1: 100 };
const gap = { x1Mm: 98, y1Mm: 50, x2Mm: 182, y2Mm: 50 };
const restP = 0.1;

/** The reveals at the front's ends: crosscuts, x and y exchanged. */
const sides = [98, 182].map((x) => ({ x1Mm: 20, y1Mm: x, x2Mm: 50, y2Mm: x }));

function splitOf(strength: number, lineEnds: number, crosscut: typeof sides) {
  const maps = noisyMaps(strength, 149.5, 0, 3, lineEnds);
  return splitAtGap(rect, { rip: [gap], crosscut }, maps, maps, { atCuts: restP, alone: 0.01 });
}

const isRest = ({ line }: FoundSeam) => line.x2Mm < 99 || line.x1Mm > 181;

function restsOf(strength: number, lineEnds: number) {
  const { seams } = splitOf(strength, lineEnds, sides)!;
  expect(seams.filter(({ line }) => line.x1Mm === gap.x1Mm && line.x2Mm === gap.x2Mm)).toHaveLength(
    1,
  );
  return seams.filter(isRest);
}

describe('splitAtGap', () => {
  it('takes the saw to have gone through where the joint shows on one side of the opening', () => {
    const [left, right, ...more] = restsOf(30, 14);
    expect(more).toEqual([]);
    expect(left!.p).toBeLessThanOrEqual(restP);
    expect(left!.implied).toBeUndefined();
    expect(right!.p).toBeGreaterThan(restP);
    expect(right!.implied).toBe(true);
    expect(right!.line.x2Mm).toBe(280);
    // On the line of what shows: the maps' row 149.5 at 3 rows a mm.
    expect(Math.abs(right!.line.y1Mm - 50)).toBeLessThan(0.5);
  });

  it('says both by themselves where both show', () => {
    const rests = restsOf(30, 40);
    expect(rests.map(({ implied }) => implied)).toEqual([undefined, undefined]);
  });

  it('takes nothing for a joint where neither side shows one', () => {
    expect(restsOf(0, 40)).toEqual([]);
  });

  it('takes a dark line that begins and ends at nothing for a crack', () => {
    expect(splitOf(0, 40, [])).toBeNull();
    expect(splitOf(0, 40, sides.slice(0, 1))).toBeNull();
  });

  it('asks more of the rest of a gap that ends within the board', () => {
    const told = [0, 4, 8, 12, 16, 20, 24, 30].flatMap((strength) => {
      const split = splitOf(strength, 40, []);
      return split ? [Math.min(...split.seams.filter(isRest).map(({ p }) => p))] : [];
    });
    expect(told.length).toBeGreaterThan(0);
    expect(Math.max(...told)).toBeLessThanOrEqual(0.01);
  });

  it('takes checks in both ends of a board, on one line by chance, for no cut', () => {
    const checks = [
      { x1Mm: 0, y1Mm: 50, x2Mm: 40, y2Mm: 50 },
      { x1Mm: 240, y1Mm: 50, x2Mm: 280, y2Mm: 50 },
    ];
    const maps = noisyMaps(0, 149.5, 0, 3, 40);
    const limits = { atCuts: restP, alone: 0.01 };
    expect(splitAtGap(rect, { rip: checks, crosscut: [] }, maps, maps, limits)).toBeNull();
  });
});
