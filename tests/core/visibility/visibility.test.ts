import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestSlideMm } from '../../../src/core/visibility/bestSlideMm.js';
import { breakCue } from '../../../src/core/visibility/breakCue.js';
import { closedFormBreak } from '../../../src/core/visibility/closedFormBreak.js';
import { contrastSensitivity } from '../../../src/core/visibility/contrastSensitivity.js';
import { cyclesPerDeg } from '../../../src/core/visibility/cyclesPerDeg.js';
import { lineOffsetMm } from '../../../src/core/visibility/lineOffsetMm.js';
import { vanishingDistanceMm } from '../../../src/core/visibility/vanishingDistanceMm.js';
import { wrapToSpacing } from '../../../src/core/visibility/wrapToSpacing.js';

const degree = Math.PI / 180;
const inside = (min: number, max: number) => fc.double({ min, max, noNaN: true });

// Printed values: method.md section 5, S table (after Watson & Ahumada 2005, J. Vision 5(9):6).
describe('contrastSensitivity', () => {
  it.each([
    [1, 77.0],
    [2, 131.6],
    [3, 155.1],
    [4, 154.8],
    [6, 128.1],
    [8, 97.7],
    [11.3, 60.6],
    [16, 31.2],
    [20, 18.2],
  ])('at %d c/deg is %d', (f, expected) => {
    expect(Math.abs(contrastSensitivity(f) - expected)).toBeLessThanOrEqual(0.05 + 1e-9);
  });
});

// Printed values: method.md section 5, closed-form table. Columns: c, s mm, theta deg, k mm,
// u mm, D mm; f, S, wrapped delta, V, vanishes at m.
type Ten = [number, number, number, number, number, number, number, number, number, number];
type Row = [...Ten, number | null];
const table: Row[] = [
  [0.1, 5, 5, 3.175, 0, 600, 2.094, 135.2, -1.837, 4.17, 6.8],
  [0.1, 3, 5, 3.175, 0, 600, 3.491, 157.1, 0.163, 1.03, 1.2],
  [0.1, 3, 20, 3.175, 0, 600, 3.491, 157.1, -0.016, 0.16, null],
  [0.05, 2, 10, 3.175, 0, 600, 5.236, 140.0, -0.873, 4.5, 2.2],
  [0.1, 5, 5, 3.175, 36.29, 600, 2.094, 135.2, 0, 0, null],
  [0.1, 5, 90, 3.175, 0, 600, 2.094, 135.2, 0, 0, null],
];

describe('closedFormBreak', () => {
  it.each(table)('reproduces the row c %d, s %d, %d deg, k %d, u %d, D %d', (...row) => {
    const [contrast, spacingMm, angleDeg, lostMm, slideMm, distanceMm, f, s, delta, v, m] = row;
    const joint = { contrast, spacingMm, angleRad: angleDeg * degree, lostMm, slideMm, distanceMm };
    const frequency = cyclesPerDeg(spacingMm, distanceMm);
    expect(frequency.toFixed(3)).toBe(f.toFixed(3));
    expect(contrastSensitivity(frequency).toFixed(1)).toBe(s.toFixed(1));
    const wrapped = wrapToSpacing(lineOffsetMm(joint), spacingMm);
    expect(Math.abs(wrapped - delta)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(closedFormBreak(joint) - v)).toBeLessThanOrEqual(0.005);
    const vanishes = vanishingDistanceMm((d) => closedFormBreak({ ...joint, distanceMm: d }));
    if (m === null) expect(vanishes).toBeNull();
    else expect((vanishes! / 1000).toFixed(1)).toBe(m.toFixed(1));
  });

  // Printed values: method.md section 5. A slide across lines at right angles to the joint is a
  // vernier task; Bradley & Skottun 1987 measured about 10 arcsec with the same flat minimum.
  it.each([
    [6, 6.9],
    [8, 6.4],
    [11.3, 6.6],
    [16, 8.0],
  ])('gives the vernier threshold at %d c/deg: %d arcsec', (f, expected) => {
    const distanceMm = 1000;
    const mmPerDeg = distanceMm * degree;
    const joint = {
      contrast: 0.5,
      spacingMm: mmPerDeg / f,
      angleRad: Math.PI / 2,
      lostMm: 0,
      distanceMm,
    };
    let [low, high] = [0, joint.spacingMm / 2];
    for (let i = 0; i < 60; i++) {
      const slideMm = (low + high) / 2;
      if (closedFormBreak({ ...joint, slideMm }) < 1) low = slideMm;
      else high = slideMm;
    }
    expect(((low / mmPerDeg) * 3600).toFixed(1)).toBe(expected.toFixed(1));
  });

  const joint = fc.record({
    contrast: inside(0.01, 0.5),
    spacingMm: inside(0.5, 20),
    angleRad: inside(-Math.PI / 2, Math.PI / 2),
    lostMm: inside(0, 8),
    slideMm: inside(-50, 50),
    distanceMm: inside(200, 10_000),
  });

  it('is undone by the best slide, the shortest one too', () => {
    fc.assert(
      fc.property(joint, (j) => {
        fc.pre(Math.abs(Math.sin(j.angleRad)) > 0.01);
        const { spacingMm, ...withoutSpacing } = j;
        const exact = bestSlideMm(withoutSpacing)!;
        const shortest = bestSlideMm(j)!;
        expect(Math.abs(shortest)).toBeLessThanOrEqual(Math.abs(exact) + 1e-9);
        for (const slideMm of [exact, shortest]) {
          expect(closedFormBreak({ ...j, spacingMm, slideMm })).toBeLessThan(1e-6);
        }
      }),
      { seed: 1 },
    );
  });

  it('does not change with a further spacing, a mirror or a turn of half a circle', () => {
    fc.assert(
      fc.property(joint, (j) => {
        fc.pre(Math.abs(Math.sin(j.angleRad)) > 0.01);
        const v = closedFormBreak(j);
        const further = j.slideMm + j.spacingMm / Math.sin(j.angleRad);
        expect(closedFormBreak({ ...j, slideMm: further })).toBeCloseTo(v, 5);
        const mirrored = { ...j, angleRad: -j.angleRad, slideMm: -j.slideMm };
        expect(closedFormBreak(mirrored)).toBeCloseTo(v, 9);
        expect(closedFormBreak({ ...j, angleRad: j.angleRad + Math.PI })).toBeCloseTo(v, 6);
      }),
      { seed: 2 },
    );
  });

  it('grows with contrast, is 0 with nothing lost and where the lines run along the joint', () => {
    fc.assert(
      fc.property(joint, (j) => {
        expect(closedFormBreak({ ...j, contrast: j.contrast * 1.1 })).toBeGreaterThanOrEqual(
          closedFormBreak(j),
        );
        expect(closedFormBreak({ ...j, lostMm: 0, slideMm: 0 })).toBe(0);
        expect(closedFormBreak({ ...j, angleRad: 0 })).toBe(0);
      }),
      { seed: 3 },
    );
    expect(bestSlideMm({ lostMm: 3, angleRad: 0 })).toBeNull();
  });
});

describe('breakCue', () => {
  it('is the closed form before grazing for even lines that miss by delta', () => {
    fc.assert(
      fc.property(inside(0.01, 0.5), inside(0.5, 10), inside(-5, 5), (c, spacingMm, deltaMm) => {
        // Analytic: |A - B| of two waves of amplitude c, delta apart, is 2 c |sin(pi delta / s)|.
        const difference = 2 * c * Math.abs(Math.sin((Math.PI * deltaMm) / spacingMm));
        const band = { frequencyPerMm: 1 / spacingMm, amplitudeA: c, amplitudeB: c, difference };
        const expected = closedFormBreak({
          contrast: c,
          spacingMm,
          // A slide across lines that stand at right angles, dense enough for grazing to be 1.
          angleRad: Math.PI / 2,
          lostMm: 0,
          slideMm: deltaMm,
          distanceMm: 900,
        });
        expect(breakCue([band], 900)).toBeCloseTo(expected, 8);
        expect(breakCue([band, band], 900)).toBeCloseTo(Math.cbrt(2) * expected, 8);
      }),
      { seed: 4 },
    );
  });

  it('is 0 without lines', () => {
    expect(breakCue([], 600)).toBe(0);
    const none = { frequencyPerMm: 1, amplitudeA: 0, amplitudeB: 0, difference: 0 };
    expect(breakCue([none], 600)).toBe(0);
  });
});
