import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlane, type Plane } from '../../../src/core/image/plane.js';
import { replicateBorder } from '../../../src/core/image/replicateBorder.js';
import { sampleBilinear } from '../../../src/core/image/sampleBilinear.js';
import { transposePlane } from '../../../src/core/image/transposePlane.js';

function filled(width: number, height: number, value: (x: number, y: number) => number): Plane {
  const plane = createPlane(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) plane.data[y * width + x] = value(x, y);
  }
  return plane;
}

const size = fc.integer({ min: 1, max: 70 });

describe('transposePlane', () => {
  it('exchanges x and y, whatever the shape', () => {
    fc.assert(
      fc.property(size, size, (width, height) => {
        const turned = transposePlane(filled(width, height, (x, y) => 1000 * x + y));
        expect([turned.width, turned.height]).toEqual([height, width]);
        expect(turned).toEqual(filled(height, width, (x, y) => 1000 * y + x));
      }),
      { numRuns: 40 },
    );
  });

  it('done twice changes nothing', () => {
    const plane = filled(65, 33, (x, y) => Math.sin(x * 7 + y));
    expect(transposePlane(transposePlane(plane))).toEqual(plane);
  });
});

describe('sampleBilinear', () => {
  it('gives a plane a + bx + cy + dxy back at every place inside', () => {
    const value = (x: number, y: number) => 2 + 0.5 * x - 0.25 * y + 0.125 * x * y;
    const plane = filled(9, 7, value);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (x, y) => {
          expect(sampleBilinear(plane, x, y)).toBeCloseTo(bilinearOf(value, x, y), 5);
        },
      ),
    );
  });

  it('holds the border beyond it', () => {
    const plane = filled(4, 3, (x, y) => 10 * y + x);
    expect(sampleBilinear(plane, -5, -5)).toBe(0);
    expect(sampleBilinear(plane, 99, 99)).toBe(23);
    expect(sampleBilinear(plane, 99, 0)).toBe(3);
  });

  it.each([
    [1, 1],
    [1, 5],
    [5, 1],
  ])('reads a plane of %d x %d px without leaving it', (width, height) => {
    const plane = filled(width, height, (x, y) => x + y);
    for (const [x, y] of [
      [-3, -3],
      [0, 0],
      [width - 1, height - 1],
      [99, 99],
    ]) {
      expect(Number.isFinite(sampleBilinear(plane, x!, y!))).toBe(true);
    }
  });

  /** By hand from the four neighbours. */
  function bilinearOf(value: (x: number, y: number) => number, x: number, y: number): number {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const [fx, fy] = [x - i, y - j];
    const row = (k: number) => (1 - fx) * value(i, k) + fx * value(i + 1, k);
    return (1 - fy) * row(j) + fy * row(j + 1);
  }
});

describe('replicateBorder', () => {
  it('paints the frame with the nearest wood inside it and leaves the rest', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 9, max: 40 }),
        fc.integer({ min: 9, max: 40 }),
        fc.integer({ min: 0, max: 4 }),
        (width, height, border) => {
          const value = (x: number, y: number) => 100 * y + x;
          const hold = (v: number, n: number) => Math.min(n - 1 - border, Math.max(border, v));
          const wanted = filled(width, height, (x, y) => value(hold(x, width), hold(y, height)));
          expect(replicateBorder(filled(width, height, value), border)).toEqual(wanted);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('keeps the middle of a plane that is all frame', () => {
    const plane = replicateBorder(
      filled(3, 3, (x, y) => 3 * y + x),
      50,
    );
    expect([...plane.data]).toEqual(Array(9).fill(4));
  });
});
