import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labPlanes } from '../../../src/core/colour/labPlanes.js';
import { linearRgbToLab } from '../../../src/core/colour/linearRgbToLab.js';
import { srgbToLab } from '../../../src/core/colour/srgbToLab.js';
import { SeamgrainError } from '../../../src/core/errors.js';

const level = fc.integer({ min: 0, max: 255 });

describe('srgbToLab', () => {
  // Second implementation: colorjs.io.
  it('agrees with colorjs.io', () => {
    fc.assert(
      fc.property(level, level, level, (red, green, blue) => {
        const reference = new Color('srgb', [red / 255, green / 255, blue / 255]).to('lab-d65')
          .coords as number[];
        srgbToLab(red, green, blue).forEach((value, i) => {
          expect(Math.abs(value - reference[i]!)).toBeLessThan(1e-3);
        });
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('calls white (100, 0, 0), black (0, 0, 0) and every grey colourless', () => {
    for (const grey of [0, 1, 18, 119, 254, 255]) {
      const [l, a, b] = srgbToLab(grey, grey, grey);
      expect(Math.hypot(a, b)).toBeLessThan(1e-9);
      if (grey === 0) expect(l).toBeCloseTo(0, 9);
      if (grey === 255) expect(l).toBeCloseTo(100, 9);
    }
  });
});

describe('labPlanes', () => {
  it('averages a checkerboard in linear light, not in levels', () => {
    const data = new Uint8Array(3 * 4 * 4);
    for (let i = 0; i < 16; i++) {
      data.fill((i + Math.floor(i / 4)) % 2 === 0 ? 255 : 0, 3 * i, 3 * i + 3);
    }
    const planes = labPlanes({ width: 4, height: 4, data }, 2);
    const half = linearRgbToLab(0.5, 0.5, 0.5)[0]; // analytic: half the light
    expect(planes.lightness.data).toHaveLength(4);
    for (const value of planes.lightness.data) expect(value).toBeCloseTo(half, 4);
  });

  it('leaves out the rest and keeps each patch in its place', () => {
    const width = 7;
    const data = new Uint8Array(3 * width * 5);
    for (let i = 0; i < data.length; i += 3) {
      const x = (i / 3) % width;
      data.set(x < 3 ? [200, 10, 30] : x < 6 ? [20, 160, 90] : [255, 255, 255], i);
    }
    const planes = labPlanes({ width, height: 5, data }, 3);
    expect([planes.a.width, planes.a.height]).toEqual([2, 1]);
    [srgbToLab(200, 10, 30), srgbToLab(20, 160, 90)].forEach((lab, i) => {
      expect(planes.lightness.data[i]).toBeCloseTo(lab[0], 4);
      expect(planes.a.data[i]).toBeCloseTo(lab[1], 4);
      expect(planes.b.data[i]).toBeCloseTo(lab[2], 4);
    });
  });

  it('refuses patches that do not fit', () => {
    const image = { width: 3, height: 3, data: new Uint8Array(27) };
    for (const reduceBy of [4, 0, 1.5]) {
      expect(() => labPlanes(image, reduceBy)).toThrow(SeamgrainError);
    }
  });
});
