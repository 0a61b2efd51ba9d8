import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../../src/core/errors.js';
import type { LayoutInput } from '../../../../src/core/shop/layout/layoutInput.js';
import { planLayout } from '../../../../src/core/shop/layout/planLayout.js';
import { simulateSequence } from '../../../../src/core/shop/layout/simulateSequence.js';
import { workSequence } from '../../../../src/core/shop/layout/workSequence.js';
import { exactMm } from '../../../../src/core/units/exactMm.js';
import { arbitraryLayout } from './arbitraryLayout.js';

const sum = (values: Fraction[]) => values.reduce((a, b) => a.add(b), new Fraction(0));

function work(input: LayoutInput) {
  const layout = planLayout(input);
  const steps = workSequence(layout, {
    edge: input.referenceEdge ?? 'upper edge',
    end: input.referenceEnd ?? 'left end',
  });
  return { layout, steps };
}

describe('pieces, kerfs and dressing', () => {
  it('add up to the blank exactly, across and along', () => {
    fc.assert(
      fc.property(arbitraryLayout, (input) => {
        const { layout } = work(input);
        const courseWidths = layout.courses.map(({ y }) => y.to.sub(y.from));
        const ripKerf = layout.kerf.mul(layout.rips.length);
        expect(sum(courseWidths).add(ripKerf).equals(layout.width)).toBe(true);
        for (const strip of layout.strips) {
          const lengths = strip.pieces.map(({ x }) => x.to.sub(x.from));
          const kerfs = layout.kerf.mul(strip.crosscuts.length);
          expect(sum(lengths).add(kerfs).equals(layout.length)).toBe(true);
        }
        const dressedEdges = layout.courses.flatMap((piece) => piece.dressedEdges);
        expect(dressedEdges.length).toBe(2 * layout.rips.length);
      }),
    );
  });

  it('come out of the virtual saw as promised, and nothing vanishes', () => {
    fc.assert(
      fc.property(arbitraryLayout, (input) => {
        const { layout, steps } = work(input);
        const done = simulateSequence(layout, layout.kerf, steps);
        const expected = layout.courses.flatMap((piece) =>
          'pieces' in piece ? piece.pieces : [piece],
        );
        expect([...done.pieces.keys()].sort()).toEqual(expected.map(({ name }) => name).sort());
        const areas = [...done.pieces.values()].map(({ x, y }) =>
          x.to.sub(x.from).mul(y.to.sub(y.from)),
        );
        const whole = sum(areas).add(done.sawnArea).add(done.dressedArea);
        expect(whole.equals(layout.length.mul(layout.width))).toBe(true);
        for (const front of input.fronts) {
          const trim = exactMm(input.trimMm ?? 0);
          const found = [...done.pieces.values()].find(
            ({ x, y }) =>
              x.from.equals(exactMm(front.xMm).sub(trim)) &&
              y.from.equals(exactMm(front.yMm).sub(trim)),
          );
          expect(found?.name).toMatch(/^front/);
          expect(found!.x.to.equals(exactMm(front.xMm + front.lengthMm).add(trim))).toBe(true);
          expect(found!.y.to.equals(exactMm(front.yMm + front.widthMm).add(trim))).toBe(true);
        }
      }),
    );
  });

  it('refuse an order that breaks a promise, and only such', () => {
    fc.assert(
      fc.property(arbitraryLayout, fc.integer(), (input, seed) => {
        const { layout, steps } = work(input);
        const sizes = (order: typeof steps) => {
          const { pieces } = simulateSequence(layout, layout.kerf, order);
          return [...pieces.values()]
            .map(
              ({ name, x, y }) =>
                [name, x, y].map(String).join() +
                JSON.stringify([x, y].map((s) => [s.from.toFraction(), s.to.toFraction()])),
            )
            .sort();
        };
        const promised = sizes(steps);
        const rips = steps.filter(({ kind }) => kind === 'rip');
        const others = steps.filter(({ kind }) => kind !== 'rip');
        const swapped = [rips[1]!, rips[0]!, ...rips.slice(2), ...others];
        expect(() => sizes(swapped)).toThrow(SeamgrainError);
        expect(() => sizes([...others, ...rips])).toThrow(SeamgrainError);
        const shuffled = shuffle(steps, seed);
        try {
          expect(sizes(shuffled)).toEqual(promised);
        } catch (error) {
          expect(error).toBeInstanceOf(SeamgrainError);
        }
      }),
    );
  });

  it('never dress a front after its crosscut', () => {
    const { layout, steps } = work({
      panel: { lengthMm: 900, widthMm: 500 },
      fronts: [{ lengthMm: 360, widthMm: 100, xMm: 270, yMm: 200 }],
      dressMm: 0.5,
    });
    const dressing = steps.find((step) => step.kind === 'dress' && step.workpiece === 'strip')!;
    const crosscut = steps.find(({ kind }) => kind === 'crosscut')!;
    const before = steps.slice(0, steps.indexOf(crosscut)).filter((step) => step !== dressing);
    const late = [...before, crosscut, dressing];
    expect(() => simulateSequence(layout, layout.kerf, late, 'ignored')).toThrow(/no strip/);
  });
});

function shuffle<T>(items: readonly T[], seed: number): T[] {
  const order = [...items];
  let state = seed >>> 0;
  for (let index = order.length - 1; index > 0; index--) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const other = state % (index + 1);
    [order[index], order[other]] = [order[other]!, order[index]!];
  }
  return order;
}
