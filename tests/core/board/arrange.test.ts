import { describe, expect, it } from 'vitest';
import { arrangeBoards } from '../../../src/core/board/arrange/arrangeBoards.js';
import { defaultArrangeOptions } from '../../../src/core/board/arrange/arrangeOptions.js';
import { type ArrangeRules, noRules } from '../../../src/core/board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../../../src/core/board/arrange/boardPhotos.js';
import type { BoardWay } from '../../../src/core/board/arrange/boardWay.js';
import { grownBetween } from '../../../src/core/board/arrange/figure/grownOrder.js';
import { leadOfFigure } from '../../../src/core/board/arrange/findStack.js';
import { imaginedMate } from '../../../src/core/board/arrange/imaginedMate.js';
import type { JointTable } from '../../../src/core/board/arrange/jointTable.js';
import { pairIndex } from '../../../src/core/board/arrange/jointTable.js';
import { readJointTable } from '../../../src/core/board/arrange/readJointTable.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { mixedSet } from '../../bench/boardSets.js';
import { leastOfAll } from '../../bench/boardsExact.js';
import { recoverSet } from '../../bench/boardsRecovery.js';

/** A table of joints drawn at random; some pairs of edges cannot be told. */
function drawnTable(seed: number, count: number, withFaceB: boolean): JointTable {
  const random = createRandom(seed);
  const edges = 4 * count;
  return {
    boards: Array.from({ length: count }, (_, i) => ({
      photos: [`board ${i + 1}`, withFaceB && i % 2 === 0 ? `back of ${i + 1}` : null],
      isImagined: false,
      lengthMm: 400,
      widthMm: 60,
      mostSteps: 0,
    })),
    distanceMm: 600,
    jointMm: 0,
    panelLengthMm: 400,
    stepMm: 1,
    mostApart: 0,
    v: Float64Array.from({ length: edges * edges }, () =>
      random.next() < 0.05 ? Number.NaN : random.uniform(0, 5),
    ),
    cue: new Uint8Array(edges * edges),
    grown: new Float64Array(edges * edges).fill(Number.NaN),
    ownGrown: Number.NaN,
    edgeColour: Array.from({ length: edges }, () => null),
    likeness: [],
    notes: [],
  };
}

const lay = (table: JointTable, rules: Partial<ArrangeRules> = {}) =>
  arrangeBoards(table, { ...noRules, ...rules });
/** Cost that counts an untold joint as just visible, as the search does. */
const costOf = ({ joints }: ReturnType<typeof lay>) =>
  joints.reduce((sum, { v }) => sum + (v ?? 1) ** 3, 0);

describe('the best order', () => {
  it.each([
    [2, true],
    [3, true],
    [4, true],
    [5, false],
    [6, false],
  ])('of %i boards costs what trying every order and way finds', (count, withFaceB) => {
    for (const seed of [1, 2, 3]) {
      const table = drawnTable(100 * count + seed, count, withFaceB);
      const result = lay(table);
      expect(result.exact).toBe(true);
      expect(costOf(result)).toBeCloseTo(leastOfAll(table), 9);
    }
  });

  it('of more than twelve boards is declared not proved', () => {
    const result = lay(drawnTable(7, 13, false));
    expect(result.exact).toBe(false);
    expect(result.notes.join(' ')).toContain('not proved');
    expect(new Set(result.order.map(({ board }) => board)).size).toBe(13);
  });

  it('keeps the rules, at no less cost than without them', () => {
    const table = drawnTable(11, 6, false);
    const ruled = lay(table, { top: 2, bottom: 4, together: [[0, 5]] });
    const boards = ruled.order.map(({ board }) => board - 1);
    expect(boards[0]).toBe(2);
    expect(boards[5]).toBe(4);
    expect(Math.abs(boards.indexOf(0) - boards.indexOf(5))).toBe(1);
    expect(costOf(ruled)).toBeGreaterThanOrEqual(costOf(lay(table)) - 1e-9);
  });

  it('lays all boards to plane one way, or reports what will tear', () => {
    const table = drawnTable(12, 4, false);
    const planingDirections = ['left', 'right', 'right', null] as const;
    const oneWay = lay(table, { planing: 'oneWay', planingDirections });
    const ways = oneWay.order.flatMap(({ planesTowards }) => planesTowards ?? []);
    expect(new Set(ways).size).toBe(1);
    expect(oneWay.conflicts).toEqual([]);
    const free = lay(table, { planingDirections });
    const torn = new Set(free.order.flatMap(({ planesTowards }) => planesTowards ?? [])).size > 1;
    expect(free.conflicts.length > 0).toBe(torn);
  });

  it('refuses rules that contradict each other', () => {
    const table = drawnTable(13, 4, false);
    expect(() => lay(table, { top: 1, bottom: 1 })).toThrow(/top and at the bottom/);
    expect(() => lay(table, { top: 9 })).toThrow(/no board 10/);
    expect(() =>
      lay(table, {
        together: [
          [0, 1],
          [0, 2],
          [0, 3],
        ],
      }),
    ).toThrow(/more than two/);
    expect(() =>
      lay(table, {
        top: 0,
        bottom: 1,
        together: [
          [0, 1],
          [2, 3],
        ],
      }),
    ).toThrow(/keeps all the rules/);
  });

  it('follows the figure where it says that the boards were one face', () => {
    const table = drawnTable(14, 4, false);
    const order = [2, 0, 3, 1];
    order.slice(1).forEach((below, i) => {
      table.grown[pairIndex(4, 4 * order[i]! + 1, 4 * below)] = 30;
    });
    const colour = [60, 10, 20] as const;
    const one = { ...table, ownGrown: 30, edgeColour: table.edgeColour.map(() => colour) };
    const grown = lay(one);
    expect(grown.laid).toBe('asGrown');
    expect(grown.order.map(({ board }) => board - 1)).toEqual(order);
    expect(grown.leastCost).toBeCloseTo(costOf(lay(table)), 9);
    expect(lay(one, { asGrown: false }).laid).toBe('leastSeen');
    // Board 2 turned end for end runs on nearly as well: no way is told.
    const torn = one.grown.slice();
    torn[pairIndex(4, 4 * 2, 4 * 0)] = 27;
    expect(lay({ ...one, grown: torn }).laid).toBe('leastSeen');
    torn[pairIndex(4, 4 * 2, 4 * 0)] = 20;
    expect(lay({ ...one, grown: torn }).laid).toBe('asGrown');
    // Boards of two colours are not one face.
    const two = one.edgeColour.map((_, edge) => (edge < 8 ? colour : ([45, 10, 20] as const)));
    expect(lay({ ...one, edgeColour: two }).laid).toBe('leastSeen');
  });
});

describe("the figure's lead", () => {
  it('is over the best stack of all others, as trying every order and way finds it', () => {
    for (const seed of [1, 2, 3, 4]) {
      const table = drawnTable(40 + seed, 4, false);
      const random = createRandom(seed);
      table.grown.forEach((_, index) => {
        table.grown[index] = random.uniform(-5, 10);
      });
      // A stack and the same turned half round are one; each is found twice.
      const stacks = everyStack(table.boards.length).map((ways) => ({
        ways,
        sum: -ways
          .slice(1)
          .reduce((sum, below, i) => sum + grownBetween(table, ways[i]!, below), 0),
      }));
      stacks.sort((a, b) => a.sum - b.sum);
      const lead = leadOfFigure(table, noRules, [], stacks[0]!);
      expect(stacks[1]!.sum).toBeCloseTo(stacks[0]!.sum, 9);
      expect(lead).toBeCloseTo(stacks[2]!.sum - stacks[0]!.sum, 9);
    }
  });
});

/** Every order and way round of boards with one face. */
function everyStack(count: number): BoardWay[][] {
  const grow = (laid: readonly BoardWay[]): BoardWay[][] =>
    laid.length === count
      ? [[...laid]]
      : Array.from({ length: 2 * count }, (_, k) => k).flatMap((k) => {
          const [board, turned] = [k >> 1, k % 2 === 1];
          if (laid.some((way) => way.board === board)) return [];
          return grow([...laid, { board, face: 'A', turned, shift: 0 }]);
        });
  return grow([]);
}

/** The same board photographed from across the bench: its picture turned half round. */
function turnedHalfRound({ faceA }: BoardPhotos): BoardPhotos {
  const { image } = faceA.photo;
  const data = new Uint8Array(image.data.length);
  for (let i = 0; i < data.length; i += 3) {
    data.set(image.data.subarray(i, i + 3), data.length - 3 - i);
  }
  const photo = { ...faceA.photo, image: { ...image, data } };
  return { faceA: { ...faceA, photo }, faceB: null };
}

describe('boards read from photos', () => {
  const small = { lengthMm: 160, pxPerMm: 4, heightMm: 40 };

  it('give every joint the same V whichever board is named first', () => {
    const boards = mixedSet(31, 3, small);
    const options = { ...defaultArrangeOptions, jointMm: 0.5 };
    const there = readJointTable(boards, options);
    const back = readJointTable([...boards].reverse(), options);
    let compared = 0;
    for (let one = 0; one < 12; one++) {
      for (let two = 0; two < 12; two++) {
        const [p, q] = [one >> 2, two >> 2];
        if (p === q || one % 4 > 1 || two % 4 > 1) continue;
        const v = there.v[pairIndex(3, one, two)]!;
        const swapped = back.v[pairIndex(3, 4 * (2 - p) + (one % 4), 4 * (2 - q) + (two % 4))]!;
        expect(swapped).toBeCloseTo(v, 10);
        compared++;
      }
    }
    expect(compared).toBe(24);
  });

  it('show the same joints when a photo is taken from the other side of the bench', () => {
    const boards = mixedSet(37, 2, small);
    const options = { ...defaultArrangeOptions, jointMm: 0.5 };
    const [one, two] = boards.map(turnedHalfRound);
    const vOf = (photos: readonly BoardPhotos[], edgeOne: number, edgeTwo: number) =>
      readJointTable(photos, options).v[pairIndex(2, edgeOne, 4 + edgeTwo)]!;
    for (const [edgeOne, edgeTwo] of [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ] as const) {
      const v = vOf(boards, edgeOne, edgeTwo);
      const turned = vOf([boards[0]!, two!], edgeOne, 1 - edgeTwo);
      const both = vOf([one!, two!], 1 - edgeOne, 1 - edgeTwo);
      // Stretches and bins begin at the other end.
      expect(Math.abs(turned / v - 1)).toBeLessThan(0.01);
      expect(Math.abs(both / v - 1)).toBeLessThan(0.01);
    }
  });

  it('of different lengths and scales are laid with their middles in line', () => {
    const [long] = mixedSet(32, 1, small);
    const [short] = mixedSet(33, 1, { lengthMm: 140, pxPerMm: 5, heightMm: 40 });
    const result = lay(readJointTable([long!, short!], defaultArrangeOptions));
    expect(result.joints[0]!.v).toBeGreaterThanOrEqual(0);
    expect(result.order.map(({ slideMm }) => slideMm)).toEqual([0, 0]);
    expect(result.panel.lengthMm).toBeCloseTo(140, 6);
    expect(result.notes.join(' ')).toContain('differ in length');
  });

  it('refuse one board, and one far too short', () => {
    const [board] = mixedSet(34, 1, small);
    const [stub] = mixedSet(35, 1, { lengthMm: 70, pxPerMm: 4, heightMm: 40 });
    expect(() => readJointTable([board!], defaultArrangeOptions)).toThrow(/One board/);
    expect(() => readJointTable([board!, stub!], defaultArrangeOptions)).toThrow(/mm long/);
  });

  it('lie as a book beside their mirrored mate, their joint in the middle', () => {
    const boards = mixedSet(36, 3, small);
    const all = [...boards, imaginedMate(boards[0]!, 'book')];
    const table = readJointTable(all, defaultArrangeOptions);
    const result = lay(table, { matched: [{ kind: 'book', boards: [0, 3] }] });
    const middle = result.order.slice(1, 3);
    expect(middle.map(({ board }) => board).sort()).toEqual([1, 4]);
    // Mirrored about the joint: both the same way round, and the figure is the same on both sides.
    expect(middle[0]!.turned).toBe(middle[1]!.turned);
    expect(result.matched[0]!.likeness).toBeGreaterThan(0.95);
  });

  it('that were one face are laid as they grew', () => {
    // The bench measures how often; this drawn softwood plank is a plain case.
    const { isRight, laid } = recoverSet(5, 'rift', { jointMm: 0.4, sawnMm: 0 }, 200);
    expect({ isRight, laid }).toEqual({ isRight: true, laid: 'asGrown' });
  });
});
