import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearLight } from '../../src/core/colour/linearLight.js';
import { resizeByArea } from '../../src/vision/resizeByArea.js';
import { srgbLevelSteps, srgbLevelTable } from '../../src/vision/srgbLevelTable.js';

const sizes = fc.record({
  width: fc.integer({ min: 1, max: 40 }),
  height: fc.integer({ min: 1, max: 40 }),
  to: fc.tuple(
    fc.double({ min: 0.02, max: 1, noNaN: true }),
    fc.double({ min: 0.02, max: 1, noNaN: true }),
  ),
  seed: fc.integer(),
});

function speckled(width: number, height: number, seed: number) {
  const data = new Uint8Array(3 * width * height);
  for (let i = 0; i < data.length; i++) data[i] = Math.imul(i + seed, 2654435761) >>> 24;
  return { width, height, data };
}

describe('resizeByArea', () => {
  it('keeps the light: the mean over the picture stays what it was', () => {
    fc.assert(
      fc.property(sizes, ({ width, height, to, seed }) => {
        const photo = speckled(width, height, seed);
        const small = resizeByArea(photo, Math.ceil(width * to[0]), Math.ceil(height * to[1]));
        const mean = (data: ArrayLike<number>) =>
          Array.from(data, linearLight).reduce((a, b) => a + b, 0) / data.length;
        // Rounding to a level moves one pixel by at most half a level, 0.0047 of light at white.
        expect(Math.abs(mean(small.data) - mean(photo.data))).toBeLessThan(0.0048);
      }),
    );
  });

  it('takes the mean of light, not of levels, over whole blocks', () => {
    const data = new Uint8Array([0, 0, 0, 255, 255, 255, 255, 255, 255, 0, 0, 0]);
    const { data: one } = resizeByArea({ width: 2, height: 2, data }, 1, 1);
    // Half the light of white is level 188 (IEC 61966-2-1: 255 (1.055 * 0.5^(1/2.4) - 0.055) = 187.5).
    expect([...one]).toEqual([188, 188, 188]);
  });

  it('turns with the picture: resizing and transposing can change places', () => {
    fc.assert(
      fc.property(sizes, ({ width, height, to, seed }) => {
        const photo = speckled(width, height, seed);
        const [w, h] = [Math.ceil(width * to[0]), Math.ceil(height * to[1])];
        const one = resizeByArea(transposed(photo), h, w).data;
        const other = transposed(resizeByArea(photo, w, h)).data;
        expect(one.every((level, i) => Math.abs(level - other[i]) <= 1)).toBe(true);
      }),
    );
  });

  it('returns every level unchanged through light and back', () => {
    const table = srgbLevelTable();
    for (let level = 0; level < 256; level++) {
      expect(table[Math.round(linearLight(level) * srgbLevelSteps)]).toBe(level);
    }
  });
});

function transposed({
  width,
  height,
  data,
}: {
  width: number;
  height: number;
  data: ArrayLike<number>;
}) {
  const turned = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      for (let c = 0; c < 3; c++) turned[3 * (x * height + y) + c] = data[3 * (y * width + x) + c];
    }
  }
  return { width: height, height: width, data: turned };
}
