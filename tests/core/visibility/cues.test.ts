import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amongLinesFactor } from '../../../src/core/visibility/amongLinesFactor.js';
import { colourCue } from '../../../src/core/visibility/colourCue.js';
import { contrastSensitivity } from '../../../src/core/visibility/contrastSensitivity.js';
import { cubicMean } from '../../../src/core/visibility/cubicMean.js';
import { cubicSum } from '../../../src/core/visibility/cubicSum.js';
import { directionCue } from '../../../src/core/visibility/directionCue.js';
import { glueLineCue } from '../../../src/core/visibility/glueLineCue.js';
import { glueLineThresholdArcsec } from '../../../src/core/visibility/glueLineThresholdArcsec.js';
import { maskCue } from '../../../src/core/visibility/maskCue.js';
import { poolCues } from '../../../src/core/visibility/poolCues.js';
import { probabilitySeen } from '../../../src/core/visibility/probabilitySeen.js';
import { spacingCue } from '../../../src/core/visibility/spacingCue.js';
import { vanishingDistanceMm } from '../../../src/core/visibility/vanishingDistanceMm.js';
import { visibilityWord } from '../../../src/core/visibility/visibilityWord.js';

const degree = Math.PI / 180;
const inside = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('directionCue', () => {
  // Analytic from the equation of method.md section 5.
  it('is 1 at 0.6 deg for clear lines and weakens with the root of their contrast', () => {
    const clear = { contrast: 1, spacingMm: 3, distanceMm: 600 };
    expect(directionCue({ ...clear, changeRad: 0.6 * degree })).toBeCloseTo(1, 9);
    expect(directionCue({ ...clear, changeRad: -1.2 * degree })).toBeCloseTo(2, 9);
    const f = (Math.PI * 600) / (180 * 3);
    const faint = { ...clear, contrast: 0.25, changeRad: 0.6 * degree };
    expect(directionCue(faint)).toBeCloseTo(Math.sqrt((0.25 * contrastSensitivity(f)) / 157), 9);
  });

  it('does not know a direction from its opposite', () => {
    fc.assert(
      fc.property(inside(-1.5, 1.5), (changeRad) => {
        const turn = { contrast: 0.1, spacingMm: 3, distanceMm: 600 };
        const x = directionCue({ ...turn, changeRad });
        expect(directionCue({ ...turn, changeRad: changeRad + Math.PI })).toBeCloseTo(x, 8);
        expect(directionCue({ ...turn, changeRad: -changeRad })).toBeCloseTo(x, 8);
      }),
      { seed: 1 },
    );
  });
});

describe('spacingCue and colourCue', () => {
  it('are 1 at their thresholds', () => {
    expect(spacingCue(4, 4 * Math.exp(0.05))).toBeCloseTo(1, 9);
    expect(spacingCue(4 * Math.exp(0.05), 4)).toBeCloseTo(1, 9);
    expect(spacingCue(2, 2)).toBe(0);
    // 50:50 perceptibility, Paravina et al. 2015.
    expect(colourCue(0.8)).toBe(1);
    expect(colourCue(0)).toBe(0);
  });
});

describe('glueLineCue', () => {
  // Printed values: method.md section 5, row 'glue: contrast .3, width .1, D 600': 3.04, 1.8 m.
  // From its own T = 3.4 arcsec the row comes out as 3.033, so the last digit is given a unit.
  it('reproduces the printed row', () => {
    const line = { contrast: 0.3, widthMm: 0.1 };
    expect(Math.abs(glueLineCue({ ...line, distanceMm: 600 }) - 3.04)).toBeLessThan(0.01);
    const vanishes = vanishingDistanceMm((distanceMm) => glueLineCue({ ...line, distanceMm }))!;
    expect((vanishes / 1000).toFixed(1)).toBe('1.8');
  });

  it('has the printed thresholds and no jump between them', () => {
    for (const [arcmin, expected] of [
      [0.1, 3.4],
      [1, 3.4],
      [2, 3.7],
      [4, 4.5],
      [10, 8.6],
      [20, 17.2], // same contrast as at 10 arcmin
    ] as const) {
      expect(glueLineThresholdArcsec(arcmin)).toBeCloseTo(expected, 9);
      expect(glueLineThresholdArcsec(arcmin - 1e-7)).toBeCloseTo(expected, 5);
    }
  });

  it('grows with contrast of either sign, and with width', () => {
    fc.assert(
      fc.property(inside(0.01, 1), inside(0.02, 3), inside(300, 5000), (c, widthMm, distanceMm) => {
        const x = glueLineCue({ contrast: c, widthMm, distanceMm });
        expect(glueLineCue({ contrast: -c, widthMm, distanceMm })).toBe(x);
        expect(glueLineCue({ contrast: 1.1 * c, widthMm, distanceMm })).toBeGreaterThan(x);
        expect(
          glueLineCue({ contrast: c, widthMm: 1.1 * widthMm, distanceMm }),
        ).toBeGreaterThanOrEqual(x - 1e-9);
      }),
      { seed: 2 },
    );
  });
});

describe('maskCue', () => {
  it('keeps a line at the own rms of the board in all cues below 5^(1/3) / 2', () => {
    // Analytic bound: m / sqrt(1 + 4 m^2) < 1/2.
    fc.assert(
      fc.property(fc.array(inside(0, 1000), { minLength: 5, maxLength: 5 }), (own) => {
        const pooled = cubicSum(own.map((m) => maskCue(m, m)))!;
        expect(pooled).toBeLessThanOrEqual(Math.cbrt(5) / 2 + 1e-12);
      }),
      { seed: 3 },
    );
    expect(Math.cbrt(5) / 2).toBeCloseTo(0.855, 3);
  });

  it('leaves a cue alone where the board is calm', () => {
    expect(maskCue(3.3, 0)).toBe(3.3);
  });
});

describe('pooling', () => {
  it('sums and averages cubes', () => {
    expect(cubicSum([1, 2, null])).toBeCloseTo(Math.cbrt(9), 12);
    expect(cubicMean([1, 2, null, Number.NaN])).toBeCloseTo(Math.cbrt(4.5), 12);
    expect(cubicMean([2.5, 2.5, 2.5])).toBeCloseTo(2.5, 12);
    expect(cubicSum([null])).toBeNull();
    expect(cubicMean([])).toBeNull();
  });

  it('names the strongest cue and leaves out what is not told', () => {
    const pooled = poolCues({ break: 1, colour: 2, direction: null });
    expect(pooled.cue).toBe('colour');
    expect(pooled.v).toBeCloseTo(Math.cbrt(9), 12);
    expect(poolCues({})).toEqual({ v: null, cue: null });
    expect(poolCues({ break: 0 })).toEqual({ v: 0, cue: null });
  });
});

describe('probabilitySeen and visibilityWord', () => {
  it('are one half at V = 1, none at 0, nearly sure at 2', () => {
    expect(probabilitySeen(0)).toBe(0);
    expect(probabilitySeen(1)).toBe(0.5);
    expect(probabilitySeen(2)).toBeCloseTo(1 - 1 / 256, 12);
  });

  // Words and limits: method.md section 5.
  it.each([
    [0, 'disappears'],
    [0.49, 'disappears'],
    [0.5, 'only if told'],
    [0.99, 'only if told'],
    [1, 'if you look for it'],
    [2, 'shows'],
    [4, 'shows'],
    [4.01, 'jumps out'],
  ])('V = %d: %s', (v, word) => expect(visibilityWord(v)).toBe(word));
});

describe('vanishingDistanceMm', () => {
  it('finds the last crossing of a curve that crosses more than once', () => {
    // Analytic: 1 + sin crosses 1 at whole multiples of pi, the last at 8 pi on this range.
    const wave = (d: number) => (d < 800 * Math.PI ? 1 - Math.sin(d / 100) : 0.5);
    expect(vanishingDistanceMm(wave)!).toBeCloseTo(800 * Math.PI, -1);
    expect(vanishingDistanceMm((d) => 1234 / d)!).toBeCloseTo(1234, 0);
  });

  it('says null for what is never seen and the far end for what always is', () => {
    expect(vanishingDistanceMm(() => 0.99)).toBeNull();
    expect(vanishingDistanceMm(() => 2)).toBe(50_000);
  });
});

describe('amongLinesFactor (properties)', () => {
  it('is nothing along the lines, whole across them, and alike for both senses', () => {
    expect(amongLinesFactor(0)).toBe(0);
    expect(amongLinesFactor(Math.PI / 2)).toBe(1);
    expect(amongLinesFactor(0.1)).toBeCloseTo(amongLinesFactor(Math.PI - 0.1), 12);
    expect(amongLinesFactor(-0.05)).toBeCloseTo(amongLinesFactor(0.05), 12);
    expect(amongLinesFactor((4 * Math.PI) / 180)).toBeCloseTo(0.5, 12);
  });
});
