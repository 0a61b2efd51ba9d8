import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageDown } from '../../../src/core/filter/averageDown.js';
import { boxMean } from '../../../src/core/filter/boxMean.js';
import { convolveSeparable } from '../../../src/core/filter/convolveSeparable.js';
import { gaussianBlur } from '../../../src/core/filter/gaussianBlur.js';
import { gaussianDerivativeKernel } from '../../../src/core/filter/gaussianDerivativeKernel.js';
import { gaussianGradient } from '../../../src/core/filter/gaussianGradient.js';
import { gaussianKernel } from '../../../src/core/filter/gaussianKernel.js';
import { halve } from '../../../src/core/filter/halve.js';
import { reflectIndex } from '../../../src/core/filter/reflectIndex.js';
import { createPlane, type Plane } from '../../../src/core/image/plane.js';

const plane: fc.Arbitrary<Plane> = fc
  .tuple(fc.integer({ min: 1, max: 13 }), fc.integer({ min: 1, max: 21 }))
  .chain(([width, height]) =>
    fc
      .array(fc.double({ min: -1, max: 1, noNaN: true }), {
        minLength: width * height,
        maxLength: width * height,
      })
      .map((values) => ({ width, height, data: Float32Array.from(values) })),
  );

const kernel = fc
  .integer({ min: 0, max: 5 })
  .chain((radius) =>
    fc.array(fc.double({ min: -1, max: 1, noNaN: true }), {
      minLength: 2 * radius + 1,
      maxLength: 2 * radius + 1,
    }),
  )
  .map((weights) => Float64Array.from(weights));

/** The definition, term by term: every other way must agree with it. */
function byDefinition(source: Plane, kx: Float64Array, ky: Float64Array): number[] {
  const { width, height, data } = source;
  return Array.from(data, (_, i) => {
    const x = i % width;
    const y = (i - x) / width;
    let sum = 0;
    ky.forEach((wy, dy) => {
      kx.forEach((wx, dx) => {
        const px = reflectIndex(x + dx - (kx.length - 1) / 2, width);
        const py = reflectIndex(y + dy - (ky.length - 1) / 2, height);
        sum += wx * wy * data[py * width + px]!;
      });
    });
    return sum;
  });
}

function expectNear(got: Float32Array, expected: ArrayLike<number>, tolerance: number): void {
  expect(got.length).toBe(expected.length);
  for (let i = 0; i < got.length; i++) {
    expect(Math.abs(got[i]! - expected[i]!), `value ${i}`).toBeLessThan(tolerance);
  }
}

describe('reflectIndex', () => {
  it('reads d c b a | a b c d | d c b a', () => {
    expect([-4, -1, 0, 3, 4, 7, 8].map((i) => reflectIndex(i, 4))).toEqual([3, 0, 0, 3, 3, 0, 0]);
    expect([-3, 5].map((i) => reflectIndex(i, 1))).toEqual([0, 0]);
  });
});

describe('convolveSeparable', () => {
  it('is the double sum of its definition, in a new plane or in place', () => {
    fc.assert(
      fc.property(plane, kernel, kernel, (source, kx, ky) => {
        const expected = byDefinition(source, kx, ky);
        expectNear(convolveSeparable(source, kx, ky).data, expected, 1e-4);
        const inPlace = { ...source, data: source.data.slice() };
        expectNear(convolveSeparable(inPlace, kx, ky, inPlace).data, expected, 1e-4);
      }),
      { seed: 1, numRuns: 150 },
    );
  });
});

describe('gaussianBlur', () => {
  it('spreads one bright pixel into the Gaussian of its sigma', () => {
    // Analytic: samples of exp(-r^2 / 2 sigma^2) / (2 pi sigma^2).
    const size = 41;
    const sigma = 2.5;
    const point = createPlane(size, size);
    point.data[20 * size + 20] = 1;
    const blurred = gaussianBlur(point, sigma);
    for (const [x, y] of [
      [20, 20],
      [23, 20],
      [18, 24],
    ] as const) {
      const r2 = (x - 20) ** 2 + (y - 20) ** 2;
      const expected = Math.exp(-r2 / (2 * sigma * sigma)) / (2 * Math.PI * sigma * sigma);
      expect(Math.abs(blurred.data[y * size + x]! / expected - 1)).toBeLessThan(1e-3);
    }
    expect(blurred.data.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 5);
  });

  it('is the double sum of its definition for narrow and wide kernels, also in place', () => {
    const sigma = fc.constantFrom(0.4, 1, 1.45, 1.6, 2.2);
    fc.assert(
      fc.property(plane, sigma, (source, sigmaPx) => {
        const weights = gaussianKernel(sigmaPx);
        const expected = byDefinition(source, weights, weights);
        expectNear(gaussianBlur(source, sigmaPx).data, expected, 1e-5);
        const inPlace = { ...source, data: source.data.slice() };
        expectNear(gaussianBlur(inPlace, sigmaPx, inPlace).data, expected, 1e-5);
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  it('keeps the mean and a flat picture', () => {
    fc.assert(
      fc.property(plane, (source) => {
        const mean = (data: Float32Array) => data.reduce((s, v) => s + v, 0) / data.length;
        expect(mean(gaussianBlur(source, 1.3).data)).toBeCloseTo(mean(source.data), 5);
      }),
      { seed: 2 },
    );
    for (const value of gaussianBlur({ width: 5, height: 4, data: new Float32Array(20).fill(7) }, 2)
      .data) {
      expect(value).toBeCloseTo(7, 5);
    }
  });

  it('has weights that sum to 1', () => {
    for (const sigma of [0.4, 1, 3.3]) {
      expect(gaussianKernel(sigma).reduce((s, v) => s + v, 0)).toBeCloseTo(1, 12);
    }
  });
});

describe('boxMean', () => {
  it('is a convolution with equal weights', () => {
    const radius = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(plane, radius, radius, (source, radiusX, radiusY) => {
        const flat = (r: number) => new Float64Array(2 * r + 1).fill(1 / (2 * r + 1));
        const expected = byDefinition(source, flat(radiusX), flat(radiusY));
        expectNear(boxMean(source, radiusX, radiusY).data, expected, 1e-5);
      }),
      { seed: 3, numRuns: 150 },
    );
  });
});

describe('averageDown', () => {
  it('gives the mean of each square and leaves out the rest', () => {
    const source = { width: 5, height: 5, data: Float32Array.from({ length: 25 }, (_, i) => i) };
    const half = averageDown(source, 2);
    expect([half.width, half.height]).toEqual([2, 2]);
    expect([...half.data]).toEqual([3, 5, 13, 15]);
    expect([...averageDown(source, 5).data]).toEqual([12]);
    expect([...averageDown(source, 1).data]).toEqual([...source.data]);
  });

  it('refuses a factor that leaves nothing', () => {
    for (const factor of [4, 0, 1.5]) {
      expect(() => averageDown(createPlane(3, 9), factor)).toThrow(/cannot be shrunk/);
    }
  });
});

describe('halve', () => {
  it('is every second sample of the definition with weights 1 3 3 1', () => {
    fc.assert(
      fc.property(plane, (source) => {
        fc.pre(source.width > 1 && source.height > 1);
        // As an odd kernel about the left of the two middle pixels: 0 1 3 3 1.
        const weights = Float64Array.of(0, 1 / 8, 3 / 8, 3 / 8, 1 / 8);
        const full = byDefinition(source, weights, weights);
        const half = halve(source);
        const expected = Array.from(half.data, (_, i) => {
          const x = i % half.width;
          return full[2 * ((i - x) / half.width) * source.width + 2 * x];
        });
        expectNear(half.data, expected, 1e-6);
      }),
      { seed: 5, numRuns: 150 },
    );
  });

  it('refuses a strip of one pixel', () => {
    expect(() => halve(createPlane(1, 9))).toThrow(/cannot be halved/);
  });
});

describe('gaussianGradient', () => {
  it('is the double sum of its definition, narrow and wide', () => {
    fc.assert(
      fc.property(plane, fc.constantFrom(0.8, 1, 1.2, 1.6, 2), (source, sigmaPx) => {
        const smooth = gaussianKernel(sigmaPx);
        const slope = gaussianDerivativeKernel(sigmaPx);
        const { gx, gy } = gaussianGradient(source, sigmaPx);
        expectNear(gx, byDefinition(source, slope, smooth), 1e-5);
        expectNear(gy, byDefinition(source, smooth, slope), 1e-5);
      }),
      { seed: 6, numRuns: 150 },
    );
  });
});
