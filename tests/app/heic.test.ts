import { readFileSync } from 'node:fs';
import Color from 'colorjs.io';
import { describe, expect, it } from 'vitest';
import { convertToSrgb } from '../../src/app/intake/heic/convertToSrgb.js';
import { decodeHeic } from '../../src/app/intake/heic/decodeHeic.js';
import { displayP3 } from '../../src/app/intake/heic/displayP3.js';
import { readMatrixProfile } from '../../src/app/intake/heic/matrixProfile.js';
import { readColourProfile } from '../../src/app/intake/heic/readColourProfile.js';

const fixture = (name: string) => {
  const file = readFileSync(new URL(`./fixtures/${name}`, import.meta.url));
  return file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength) as ArrayBuffer;
};

/** The quadrants as makeHeic.mjs drew them, sRGB. */
const [red, green, blue, grey] = [
  [200, 60, 40],
  [60, 160, 60],
  [40, 60, 180],
  [150, 140, 120],
] as const;

async function quadrantsOf(name: string) {
  const { rgba, width, height } = await decodeHeic(fixture(name));
  const pixel = (x: number, y: number) => {
    const at = 4 * (Math.floor(y * height) * width + Math.floor(x * width));
    return [...rgba.slice(at, at + 3)];
  };
  return {
    width,
    height,
    all: [pixel(0.25, 0.25), pixel(0.75, 0.25), pixel(0.25, 0.75), pixel(0.75, 0.75)],
  };
}

function expectClose(found: readonly number[][], wanted: readonly (readonly number[])[]) {
  found.forEach((pixel, n) => {
    // Two lossy codecs lie between the drawing and this pixel; a missing profile is off by 25.
    pixel.forEach((value, c) => {
      expect(Math.abs(value - wanted[n]![c]!)).toBeLessThanOrEqual(2);
    });
  });
}

describe('HEIC', () => {
  it('comes out in sRGB although it is stored as Display P3', async () => {
    const { width, height, all } = await quadrantsOf('quadrants.heic');
    expect([width, height]).toEqual([128, 96]);
    expectClose(all, [red, green, blue, grey]);
  });

  it('is turned as its irot property says: a quarter anticlockwise', async () => {
    const { width, height, all } = await quadrantsOf('quadrants-turned.heic');
    expect([width, height]).toEqual([96, 128]);
    expectClose(all, [green, grey, red, blue]);
  });

  it('that is cut short is refused in words', async () => {
    await expect(decodeHeic(fixture('quadrants.heic').slice(0, 700))).rejects.toThrow(
      /could not be read/,
    );
  });
});

describe('colour profiles', () => {
  it('of a HEIC file are found and read', () => {
    const profile = readColourProfile(fixture('quadrants.heic'));
    expect(profile?.kind).toBe('icc');
    const matrix = profile?.kind === 'icc' ? readMatrixProfile(profile.bytes) : null;
    matrix!.toXyz.flat().forEach((value, n) => {
      // Profiles in the wild round the matrix: libvips' own writes 0 for -0.00105.
      expect(Math.abs(value - displayP3.toXyz.flat()[n]!)).toBeLessThan(0.0015);
    });
    expect(matrix!.curves[0][128]).toBeCloseTo(displayP3.curves[0][128]!, 4);
  });

  it('convert like colorjs.io, to one level', () => {
    const rgba = new Uint8ClampedArray(4 * 512);
    for (let n = 0; n < 512; n++) {
      rgba.set([(n & 7) * 36, ((n >> 3) & 7) * 36, ((n >> 6) & 7) * 36, 255], 4 * n);
    }
    const before = [...rgba];
    convertToSrgb(rgba, displayP3);
    for (let n = 0; n < 512; n++) {
      const p3 = before.slice(4 * n, 4 * n + 3).map((level) => level / 255);
      const srgb = new Color('p3', p3 as [number, number, number]).to('srgb').coords;
      srgb.forEach((value, c) => {
        const wanted = 255 * Math.min(1, Math.max(0, value ?? 0));
        expect(Math.abs(rgba[4 * n + c]! - wanted)).toBeLessThanOrEqual(1);
      });
    }
  });
});
