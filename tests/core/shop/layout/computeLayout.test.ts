import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../../src/core/errors.js';
import { computeLayout } from '../../../../src/core/shop/layout/computeLayout.js';
import type { LayoutInput } from '../../../../src/core/shop/layout/layoutInput.js';
import { parseRuleStep } from '../../../../src/core/shop/layout/parseRuleStep.js';
import { repeatFronts } from '../../../../src/core/shop/layout/repeatFronts.js';
import { arbitraryLayout } from './arbitraryLayout.js';

/** Inches as millimetres without binary dust. */
const mm = (inches: number) => Number((inches * 25.4).toFixed(9));
/** A 14 x 4 in front in a 36 x 20 in panel, 1/8 in kerf: every number below is head arithmetic. */
const chest: LayoutInput = {
  panel: { lengthMm: mm(36), widthMm: mm(20) },
  fronts: [{ lengthMm: mm(14), widthMm: mm(4), xMm: mm(11), yMm: mm(8) }],
};
const drawers = (count: number, railMm: number): LayoutInput => ({
  panel: { lengthMm: 800, widthMm: 700 },
  fronts: repeatFronts({
    first: { lengthMm: 400, widthMm: 120, xMm: 200, yMm: 60 },
    rows: count,
    columns: 1,
    railMm,
    dividerMm: 0,
    kerfMm: 3.175,
    dressMm: 0.5,
    trimMm: 1,
    trimEndsMm: 1,
  }),
  dressMm: 0.5,
  trimMm: 1,
});

describe('layout', () => {
  it('two 1/8 in kerfs need 1/4 in [common practice, no published source]', () => {
    const { needs, spare, panel } = computeLayout(chest);
    expect(needs.widthMm).toBe(mm(4.25));
    expect(needs.lengthMm).toBe(mm(14.25));
    expect(needs.widthMm + spare.widthMm).toBeCloseTo(panel.widthMm, 9);
    expect(needs.lengthMm + spare.lengthMm).toBeCloseTo(panel.lengthMm, 9);
  });

  it('cuts to opposite sides of the blade from one reference edge [common practice]', () => {
    const { cuts } = computeLayout(chest);
    const shown = cuts.map(({ kind, reference, fenceMm, toBlade, keeps }) => [
      kind,
      reference,
      Number((fenceMm / 25.4).toFixed(9)),
      toBlade,
      keeps,
    ]);
    expect(shown).toEqual([
      ['rip', 'upper edge', 12, 'near', 'strip'],
      ['rip', 'upper edge', 8, 'far', 'strip'],
      ['crosscut', 'left end', 25, 'near', 'front'],
      ['crosscut', 'left end', 11, 'far', 'front'],
    ]);
  });

  it('keeps both parts of the front whatever the kerf', () => {
    for (const kerfMm of [1.6, 2.4, 3.175, 4]) {
      const front = computeLayout({ ...chest, kerfMm }).pieces.find(
        ({ kind }) => kind === 'front',
      )!;
      expect([front.lengthMm, front.widthMm]).toEqual([mm(14), mm(4)]);
      expect(front.onPanel).toEqual({ xMm: mm(11), yMm: mm(8) });
    }
  });

  it('loses kerf and two dressings at each rip; the strip keeps front and trim', () => {
    const dress = mm(1 / 64);
    const trim = mm(1 / 16);
    const { pieces, gluedFace, needs } = computeLayout({ ...chest, dressMm: dress, trimMm: trim });
    const loss = mm(1 / 8) + 2 * dress;
    expect(gluedFace.widthMm).toBeCloseTo(mm(20) - 2 * loss, 9);
    const front = pieces.find(({ name }) => name === 'front')!;
    expect(front.dressedWidthMm).toBeCloseTo(mm(4) + 2 * trim, 9);
    expect(front.widthMm).toBeCloseTo(mm(4) + 2 * trim + 2 * dress, 9);
    expect(needs.widthMm).toBeCloseTo(mm(4) + 2 * trim + 2 * loss, 9);
  });

  it('names the pieces as a maker does', () => {
    expect(computeLayout(chest).pieces.map(({ name }) => name)).toEqual([
      'upper rail',
      'left end',
      'front',
      'right end',
      'lower rail',
    ]);
  });

  it('needs the finished face and its losses when a face is asked for', () => {
    const layout = computeLayout({
      ...chest,
      face: { lengthMm: mm(35), widthMm: mm(19) },
      endSlideMm: { leftMm: mm(1 / 8), rightMm: mm(1 / 8) },
    });
    expect(layout.needs).toEqual({ widthMm: mm(19.25), lengthMm: mm(35.25) });
    expect(layout.spare.upperMm + layout.spare.lowerMm).toBeCloseTo(mm(0.75), 9);
    expect(layout.openings[0]!.gapMm.left).toBe(0);
    expect(layout.steps.map(({ kind }) => kind)).toContain('square');
  });

  it('leaves one kerf beside a front whose end pieces stay', () => {
    expect(computeLayout(chest).openings[0]!.gapMm).toEqual({
      upper: 0,
      lower: 0,
      left: 3.175,
      right: 3.175,
    });
  });

  it.each([
    ['narrow', { panel: { lengthMm: mm(36), widthMm: mm(4) } }, /1\/4 in \(6.4 mm\) too narrow/],
    ['short', { panel: { lengthMm: mm(14), widthMm: mm(20) } }, /1\/4 in \(6.[34] mm\) too short/],
    [
      'too near the edge',
      { fronts: [{ ...chest.fronts[0]!, yMm: 2 }] },
      /3\/64 in \(1.2 mm\) too little wood above the front/,
    ],
    ['beyond the end', { fronts: [{ ...chest.fronts[0]!, xMm: mm(30) }] }, /right of the front/],
  ])('a panel %s is refused, saying by how much', (_, change, message) => {
    const compute = () => computeLayout({ ...chest, ...change });
    expect(compute).toThrow(SeamgrainError);
    expect(compute).toThrow(message);
  });

  it.each([
    { kerfMm: 0 },
    { kerfMm: Number.NaN },
    { dressMm: -1 },
    { fronts: [] },
    { panel: { lengthMm: 0, widthMm: 5 } },
    { endSlideMm: { leftMm: 10, rightMm: 0 } },
    { thickness: { roughMm: 20, finishedMm: 22 } },
  ])('refuses figures that cannot be: %o', (change) => {
    expect(() => computeLayout({ ...chest, ...change })).toThrow(SeamgrainError);
  });
});

describe('banks', () => {
  it('lay three drawers in a column with rails between, or parted by one rip', () => {
    const railed = computeLayout(drawers(3, 20));
    expect(railed.cuts.filter(({ kind }) => kind === 'rip').length).toBe(6);
    const rails = railed.pieces.filter(({ name }) => name.startsWith('middle rail'));
    expect(rails.map(({ dressedWidthMm }) => dressedWidthMm)).toEqual([20, 20]);
    const stacked = computeLayout(drawers(3, 0));
    expect(stacked.cuts.filter(({ kind }) => kind === 'rip').length).toBe(4);
    expect(stacked.pieces.map(({ name }) => name)).not.toContain('middle rail 1');
  });

  it('part a pair of doors with a single crosscut', () => {
    const fronts = repeatFronts({
      first: { lengthMm: 250, widthMm: 400, xMm: 100, yMm: 100 },
      rows: 1,
      columns: 2,
      railMm: 0,
      dividerMm: 0,
      kerfMm: 3,
      dressMm: 0,
      trimMm: 0,
      trimEndsMm: 0,
    });
    const doors = computeLayout({
      panel: { lengthMm: 900, widthMm: 700 },
      fronts,
      kerfMm: 3,
    });
    expect(doors.cuts.filter(({ kind }) => kind === 'crosscut').length).toBe(3);
    expect(doors.needs.lengthMm).toBe(250 + 250 + 3 * 3);
    expect(doors.openings.map(({ gapMm }) => [gapMm.left, gapMm.right])).toEqual([
      [3, 1.5],
      [1.5, 3],
    ]);
  });

  it('refuse fronts that are in each other’s way', () => {
    const second = { ...chest.fronts[0]!, yMm: mm(12) + 4 };
    expect(() => computeLayout({ ...chest, fronts: [...chest.fronts, second] })).toThrow(
      /between strips 1 and 2/,
    );
  });
});

describe('other fronts', () => {
  it('of other wood put the crosscut kerfs inside the opening', () => {
    const { needs, openings, pieces, notes } = computeLayout({
      ...chest,
      frontWood: 'contrasting',
    });
    expect(needs.lengthMm).toBe(mm(14));
    expect(openings[0]!.lengthMm).toBe(mm(14));
    expect(pieces.map(({ name }) => name)).toContain('cut-out');
    expect(notes.join(' ')).toMatch(/no grain runs through it/);
  });
});

describe('rounding to the rule', () => {
  it('never takes from the kept piece, and shows what the others pay', () => {
    fc.assert(
      fc.property(
        arbitraryLayout,
        fc.constantFrom('1/16in', '1/32in', '1/64in', '0.001in', '0.5mm'),
        (input, rule) => {
          const layout = computeLayout({ ...input, rule: parseRuleStep(rule) });
          for (const cut of layout.cuts) {
            const steps: Record<string, number> = { '1/16in': 1.5875, '1/32in': 0.79375 };
            const step = steps[rule] ?? 0.5;
            expect(Math.abs(cut.setting.errorMm)).toBeLessThan(step + 1e-6);
            const gain = cut.toBlade === 'near' ? cut.setting.errorMm : -cut.setting.errorMm;
            expect(gain).toBeGreaterThanOrEqual(-1e-6);
            if (gain > 1e-5) expect(cut.note).toMatch(/Rounded/);
          }
          for (const piece of layout.pieces) {
            if (piece.kind !== 'front') continue;
            const keepsSize =
              piece.asSet.widthMm >= piece.dressedWidthMm - 1e-6 &&
              piece.asSet.lengthMm >= piece.lengthMm - 1e-6;
            // Only a cut shared by two fronts can take from one of them, and then it is said.
            const isSaid = layout.cautions.some((text) => text.includes(`off the ${piece.name},`));
            expect(isSaid).toBe(!keepsSize);
          }
        },
      ),
    );
  });

  it('warns where a piece has not that much to spare', () => {
    const tight: LayoutInput = {
      ...chest,
      fronts: [{ ...chest.fronts[0]!, yMm: mm(8.01) }],
      face: { lengthMm: mm(36), widthMm: mm(19.75) },
      rule: { style: 'fraction', denominator: 16 },
    };
    const { cautions, spare } = computeLayout(tight);
    expect(spare.widthMm).toBeCloseTo(0, 9);
    expect(cautions.join(' ')).toMatch(/Rounding to this rule takes .* off the lower rail/);
  });
});

describe('safety', () => {
  it('says so when a piece is too narrow for the saw', () => {
    const near = { ...chest.fronts[0]!, yMm: mm(1) };
    const { safety, cautions } = computeLayout({
      ...chest,
      fronts: [near],
      referenceEdge: 'upper edge',
    });
    expect(safety.canBeCut).toBe(false);
    expect(safety.problems.join(' ')).toMatch(/too narrow for the table saw/);
    expect(cautions.join(' ')).toMatch(/too narrow for the table saw/);
  });

  it('takes the other edge as reference where that is enough', () => {
    const near = { ...chest.fronts[0]!, yMm: mm(1) };
    const { safety, cuts } = computeLayout({ ...chest, fronts: [near] });
    expect(safety.canBeCut).toBe(true);
    expect(cuts[0]!.reference).toBe('lower edge');
  });

  it('says so when a piece is too short for the fence, the sled or the jointer', () => {
    const small = computeLayout({
      panel: { lengthMm: 250, widthMm: 300 },
      fronts: [{ lengthMm: 150, widthMm: 80, xMm: 40, yMm: 100 }],
      dressMm: 0.4,
    });
    const all = small.safety.problems.join(' ');
    expect(all).toMatch(/too short to run along the fence/);
    expect(all).toMatch(/too short for the sled/);
    expect(all).toMatch(/too short for the jointer/);
  });

  it('stands beside the step that it concerns', () => {
    const { cuts, steps } = computeLayout({ ...chest, dressMm: 0.4 });
    for (const cut of cuts) {
      const words = cut.cautions.join(' ');
      if (cut.kind === 'rip') expect(words).toMatch(/riving knife/);
      else expect(words).toMatch(/sled .* Never against the rip fence/);
    }
    expect(cuts[1]!.cautions.join(' ')).toMatch(/Bowed or twisted stock never runs on the fence/);
    const kinds = ['prepare', 'dress', 'glue', 'flatten', 'fit'];
    for (const step of steps.filter(({ kind }) => kinds.includes(kind))) {
      expect(step.cautions.length).toBeGreaterThan(0);
    }
    expect(computeLayout(chest).cautions.join(' ')).toMatch(/manual, local codes and trained/);
  });
});

describe('depth', () => {
  it('shares the spare thickness between step and bow [derived]', () => {
    const { planing } = computeLayout({ ...chest, thickness: { roughMm: 25.4, finishedMm: 22.4 } });
    expect(planing).toMatchObject({ toLoseMm: 3, eachFaceMm: 1.5, absorbsMm: 3 });
  });
});
