import { describe, expect, it } from 'vitest';
import { arrangeBoards, judgeOrder } from '../../../src/core/board/arrange/arrangeBoards.js';
import { type ArrangeRules, noRules } from '../../../src/core/board/arrange/arrangeRules.js';
import type { BoardWay } from '../../../src/core/board/arrange/boardWay.js';
import type { JointTable } from '../../../src/core/board/arrange/jointTable.js';
import { slideFewest } from '../../../src/core/board/arrange/slideFewest.js';
import { createRandom } from '../../../src/core/random/createRandom.js';

/** Joints drawn at random; boards 0 and 2 have a second face. */
function drawnTable(seed: number, count: number, mostSteps = 0): JointTable {
  const random = createRandom(seed);
  const size = (4 * count) ** 2 * (4 * mostSteps + 1);
  return {
    boards: Array.from({ length: count }, (_, i) => ({
      photos: [`photos/plank-${i + 1}.jpg`, i % 2 === 0 ? `photos/back-${i + 1}.jpg` : null],
      isImagined: false,
      lengthMm: 400,
      widthMm: 60,
      mostSteps,
    })),
    distanceMm: 600,
    jointMm: 0,
    panelLengthMm: 400,
    stepMm: 4,
    mostApart: 2 * mostSteps,
    v: Float64Array.from({ length: size }, () => random.uniform(0, 5)),
    cue: new Uint8Array(size),
    grown: new Float64Array((4 * count) ** 2).fill(Number.NaN),
    ownGrown: Number.NaN,
    edgeColour: Array.from({ length: 4 * count }, () => null),
    likeness: [],
    notes: [],
  };
}

const rules: ArrangeRules = {
  ...noRules,
  top: 2,
  together: [[0, 3]],
  heart: 'alternating',
  heartFaces: ['A', 'A', 'B', null, 'A'],
  planing: 'oneWay',
  planingDirections: ['left', null, 'right', 'right', null],
};
const waysOf = (result: ReturnType<typeof arrangeBoards>, stepMm: number): BoardWay[] =>
  result.order.map(({ board, face, turned, slideMm }) => ({
    ...{ board: board - 1, face, turned, shift: slideMm / stepMm },
  }));

describe('rules of the maker', () => {
  it('are all kept by the order found, and by no account of it called broken', () => {
    for (const seed of [1, 2, 3]) {
      const table = drawnTable(seed, 5);
      const found = arrangeBoards(table, rules);
      const laid = judgeOrder(table, rules, waysOf(found, 4));
      expect(laid.totalCost).toBeCloseTo(found.totalCost, 9);
      expect(laid.notes.filter((note) => / to lie | to plane | to alternate/.test(note))).toEqual(
        [],
      );
    }
  });

  it('that an order laid by hand breaks are named with the boards that break them', () => {
    const way = (board: number, turned = false): BoardWay => {
      return { board, face: 'A', turned, shift: 0 };
    };
    const ways = [way(0), way(1), way(2), way(3), way(4)];
    const { notes, conflicts } = judgeOrder(drawnTable(1, 5), rules, ways);
    const said = notes.join(' ');
    expect(said).toContain('plank-3 is to lie at the top.');
    expect(said).toContain('plank-1 and plank-4 are to lie side by side.');
    expect(said).toContain('plank-1 and plank-2 show the same side');
    expect(said).not.toContain('plank-2 and plank-3 show');
    expect(said).toContain('The boards are all to plane the same way, and do not.');
    expect(conflicts[0]!.text).toMatch(/^plank-1 planes towards the left, the rest, where known,/);
    const up = judgeOrder(drawnTable(1, 5), { ...noRules, ...rules, heart: 'up' }, ways);
    expect(up.notes.join(' ')).toContain('plank-3 lies heart side down.');
    expect(judgeOrder(drawnTable(1, 5), noRules, ways).notes).toEqual([]);
  });
});

describe('slides', () => {
  it('are the fewest that leave every board as it lies against its neighbours', () => {
    const random = createRandom(5);
    const slid = (ways: readonly BoardWay[]) => ways.filter(({ shift }) => shift !== 0).length;
    let fewer = 0;
    for (let round = 0; round < 50; round++) {
      const most = Array.from({ length: 5 }, () => random.integer(4));
      const ways = most.map((steps, board): BoardWay => {
        const shift = random.integer(2 * steps + 1) - steps;
        return { board, face: 'A', turned: false, shift };
      });
      const now = slideFewest(ways, most);
      now.forEach(({ shift }, i) => {
        expect(Math.abs(shift)).toBeLessThanOrEqual(most[i]!);
        expect(shift - now[0]!.shift).toBe(ways[i]!.shift - ways[0]!.shift);
      });
      // Trying every common shift finds none with fewer boards slid.
      for (let by = -6; by <= 6; by++) {
        const moved = ways.map((way) => ({ ...way, shift: way.shift + by }));
        if (moved.every(({ shift }, i) => Math.abs(shift) <= most[i]!))
          expect(slid(now)).toBeLessThanOrEqual(slid(moved));
      }
      if (slid(now) < slid(ways)) fewer++;
    }
    expect(fewer).toBeGreaterThan(0);
  });
});
