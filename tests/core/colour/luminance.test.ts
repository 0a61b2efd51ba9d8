import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearLuminancePlane } from '../../../src/core/colour/linearLuminancePlane.js';
import { logLuminancePlane } from '../../../src/core/colour/logLuminancePlane.js';

const pixels = fc.uint8Array({ minLength: 30, maxLength: 30 });
const picture = (data: Uint8Array) => ({ width: 5, height: 2, data });

describe('linearLuminancePlane', () => {
  // Second implementation: colorjs.io.
  it('agrees with colorjs.io', () => {
    fc.assert(
      fc.property(pixels, (data) => {
        linearLuminancePlane(picture(data)).data.forEach((value, i) => {
          const levels = [...data.subarray(3 * i, 3 * i + 3)] as [number, number, number];
          const srgb = levels.map((level) => level / 255) as [number, number, number];
          expect(Math.abs(value - new Color('srgb', srgb).get('xyz-d65.y')!)).toBeLessThan(1e-6);
        });
      }),
      { seed: 4, numRuns: 50 },
    );
  });

  it('is 0 for black and 1 for white', () => {
    const data = new Uint8Array(6).fill(255, 3);
    const plane = linearLuminancePlane({ width: 2, height: 1, data });
    expect(plane.data[0]).toBe(0);
    expect(plane.data[1]).toBeCloseTo(1, 6);
  });
});

describe('logLuminancePlane', () => {
  it('is the logarithm of the luminance above the floor', () => {
    fc.assert(
      fc.property(pixels, fc.constantFrom(1 / 4096, 1 / 512, 0.02), (data, floorY) => {
        const linear = linearLuminancePlane(picture(data)).data;
        logLuminancePlane(picture(data), floorY).data.forEach((value, i) => {
          expect(Math.abs(value - Math.log(Math.max(linear[i]!, floorY)))).toBeLessThan(2.6e-4);
        });
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});
