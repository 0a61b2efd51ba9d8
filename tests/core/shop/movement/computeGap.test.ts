import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../../src/core/errors.js';
import { computeLayout } from '../../../../src/core/shop/layout/computeLayout.js';
import { computeGap } from '../../../../src/core/shop/movement/computeGap.js';
import { findSpecies } from '../../../../src/core/shop/movement/findSpecies.js';
import type { GapInput, WoodState } from '../../../../src/core/shop/movement/gapInput.js';
import { parseRingAngles } from '../../../../src/core/shop/movement/parseRingAngles.js';
import { speciesTable } from '../../../../src/core/shop/movement/speciesTable.js';
import { trimForGap } from '../../../../src/core/shop/movement/trimForGap.js';
import { parseClimate } from '../../../../src/core/units/parseClimate.js';

const air = (text: string): WoodState => ({ kind: 'climate', climate: parseClimate(text) });
const moist = (percent: number): WoodState => ({ kind: 'moisture', percent });
const maple: GapInput = {
  species: 'hard maple',
  acrossMm: 101.6,
  rings: parseRingAngles('flatsawn'),
  from: air('35%@70F'),
  to: air('80%@70F'),
};

describe('gap', () => {
  it('a 4 in flatsawn maple front, 35 to 80 %, wants about 1/8 in', () => {
    // Common practice, no published source; trade.md 1.9 computes 0.128 in from Eq. (13-2) [C].
    const { gapMm, mcFrom, mcTo, coefficient, equation } = computeGap(maple);
    expect(gapMm / 25.4).toBeGreaterThan(0.12);
    expect(gapMm / 25.4).toBeLessThan(0.135);
    expect(mcFrom).toBeCloseTo(6.9, 1);
    expect(mcTo).toBeCloseTo(16.0, 1);
    // Outside 6 to 14 %, so Eq. (13-3); its slope here is within 2 % of Table 13-5's .00353.
    expect(equation).toMatch(/13-3/);
    expect(Math.abs(coefficient / 0.00353 - 1)).toBeLessThan(0.02);
  });

  it('uses the published coefficient inside 6 to 14 %', () => {
    const oak = computeGap({
      species: 'white oak',
      acrossMm: 100,
      rings: parseRingAngles('90deg'),
      from: moist(12),
      to: moist(8),
    });
    // Wood Handbook Table 13-5 [L], white oak, commercial: C_R .00180.
    expect(oak.coefficient).toBe(0.0018);
    expect(oak.changeMm).toBeCloseTo(-0.72, 9);
    expect(oak.gapMm).toBeCloseTo(0.72, 9);
    expect(oak.seasons.fittedMm).toBe(0);
    expect(oak.seasons.driestMm).toBeCloseTo(0.72, 9);
    expect(oak.equation).toMatch(/13-2/);
    expect(oak.notes.join(' ')).toMatch(/commercial/);
  });

  it('about 1 % of the size per 4 % moisture flatsawn, per 7 % quartered', () => {
    // Common practice, no published source: so only the middle of the table must lie near it.
    const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
    const flat = median(speciesTable.map(({ coefficient }) => coefficient.tangential * 4));
    const quartered = median(speciesTable.map(({ coefficient }) => coefficient.radial * 7));
    expect(flat).toBeGreaterThan(0.008);
    expect(flat).toBeLessThan(0.0125);
    expect(quartered).toBeGreaterThan(0.008);
    expect(quartered).toBeLessThan(0.0125);
  });

  it('leaves almost nothing to do in a solid surround of the same wood and cut', () => {
    const solid = computeGap({ ...maple, surround: { kind: 'solid' } });
    expect(solid.openingChangeMm).toBeCloseTo(solid.changeMm, 9);
    // What is left is the allowance for a front that runs 1 % ahead of its panel.
    expect(solid.gapMm).toBeCloseTo(101.6 * solid.coefficient, 6);
    expect(solid.gapMm).toBeLessThan(computeGap(maple).gapMm / 5);
  });

  it('says when a layout’s trim is less than the gap wants', () => {
    const layout = computeLayout({
      panel: { lengthMm: 900, widthMm: 500 },
      fronts: [{ lengthMm: 360, widthMm: 101.6, xMm: 270, yMm: 200 }],
      trimMm: 1,
    });
    expect(trimForGap(layout, computeGap(maple)).join(' ')).toMatch(/gap wants 1\/8 in/);
    expect(trimForGap(layout, computeGap({ ...maple, surround: { kind: 'solid' } }))).toEqual([]);
  });

  it('warns that a stable front binds in a solid panel when it dries', () => {
    const veneered = computeGap({
      ...maple,
      surround: { kind: 'solid' },
      isVeneered: true,
      from: moist(12),
      to: moist(7),
    });
    const framed = computeGap({ ...maple, isVeneered: true, from: moist(12), to: moist(7) });
    expect(framed.gapMm).toBeLessThan(0.1);
    expect(veneered.gapMm).toBeGreaterThan(1.5);
    expect(veneered.seasons.driestMm).toBeLessThan(veneered.seasons.dampestMm);
  });

  it('never binds: no gap is negative in any state or month', () => {
    const state = fc.double({ min: 4, max: 24, noNaN: true });
    const climate = fc.record({
      relativeHumidityPercent: fc.double({ min: 10, max: 95, noNaN: true }),
      temperatureC: fc.double({ min: 5, max: 35, noNaN: true }),
    });
    fc.assert(
      fc.property(
        state,
        state,
        fc.array(climate, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(...speciesTable.map(({ name }) => name)),
        fc.constantFrom(undefined, 'hard maple', 'western redcedar'),
        fc.boolean(),
        (from, to, months, species, around, isVeneered) => {
          const gap = computeGap({
            species,
            acrossMm: 150,
            rings: { kind: 'pith', xMm: 40, depthMm: 70 },
            from: moist(from),
            to: moist(to),
            months,
            isVeneered,
            surround: around ? { kind: 'solid', species: around } : { kind: 'framed' },
          });
          const states = [gap.seasons.fittedMm, gap.seasons.driestMm, gap.seasons.dampestMm];
          const gaps = [...states, ...gap.months!.map(({ gapMm }) => gapMm)];
          for (const mm of gaps) expect(mm).toBeGreaterThanOrEqual(-1e-6);
          expect(gap.gapMm).toBeGreaterThanOrEqual(Math.max(...gaps) - Math.min(...gaps) - 1e-6);
          expect(gap.place.topMm + gap.place.bottomMm).toBeCloseTo(gap.seasons.fittedMm, 8);
        },
      ),
    );
  });

  it('keeps the reveal when the front is widest', () => {
    const gap = computeGap({ ...maple, revealMm: 1.5875, chamferMm: 0.8 });
    expect(gap.seasons.dampestMm).toBeCloseTo(1.5875, 6);
    expect(gap.looks.dampestLineMm).toBeCloseTo(1.5875 + 1.6, 6);
  });

  it('hardly moves along the grain (0.1 to 0.2 % green to ovendry [L])', () => {
    const { ends } = computeGap({ ...maple, lengthMm: 355.6 });
    expect(ends!.changeMm).toBeGreaterThan(0);
    expect(ends!.changeMm).toBeLessThan(0.3);
  });

  it('is surer with a known ring angle than with a class', () => {
    const known = computeGap({ ...maple, rings: { kind: 'angle', angleDeg: 45 } });
    const rift = computeGap({ ...maple, rings: { kind: 'class', cut: 'rift' } });
    expect(known.changeMm).toBe(rift.changeMm);
    expect(known.changeSeMm).toBeLessThan(rift.changeSeMm);
    expect(rift.coefficientRange[0]).toBeLessThan(rift.coefficient);
  });

  it('finds species by trade and botanical names and refuses vague ones', () => {
    expect(findSpecies('Sugar Maple').botanical).toBe('Acer saccharum');
    expect(findSpecies('quercus alba').name).toBe('white oak');
    expect(findSpecies('yellow poplar').name).toBe('yellow-poplar');
    expect(() => findSpecies('maple')).toThrow(/several/);
    expect(() => findSpecies('oak')).toThrow(/several/);
    expect(() => findSpecies('unobtainium')).toThrow(SeamgrainError);
    expect(() => findSpecies('')).toThrow(SeamgrainError);
    for (const { name, botanical, aliases } of speciesTable) {
      for (const known of [name, botanical, ...aliases]) expect(findSpecies(known).name).toBe(name);
    }
  });

  it('refuses what cannot be', () => {
    for (const bad of [
      { ...maple, acrossMm: 0 },
      { ...maple, from: moist(140) },
      { ...maple, rings: { kind: 'angle', angleDeg: 100 } as const },
      { ...maple, months: [] },
    ]) {
      expect(() => computeGap(bad)).toThrow(SeamgrainError);
    }
    const { to: _, ...oneState } = maple;
    expect(() => computeGap(oneState)).toThrow(/one state/);
  });
});
