import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coherence } from '../../../src/core/grain/coherence.js';
import { orientationRad } from '../../../src/core/grain/orientationRad.js';
import { structureTensor } from '../../../src/core/grain/structureTensor.js';
import { structureTensorBlocks } from '../../../src/core/grain/structureTensorBlocks.js';
import { structureTensorExact } from '../../../src/core/grain/structureTensorExact.js';
import type { TensorField } from '../../../src/core/grain/tensorField.js';
import { createPlane, type Plane } from '../../../src/core/image/plane.js';
import { drawGrating } from '../filter/drawGrating.js';

const degree = Math.PI / 180;
const size = 64;

/** 12 x 12 random levels, each drawn as 4 x 4 px: structure at the scale of the field. */
function drawPatches(seed: number): Plane {
  let state = seed;
  const levels = Float32Array.from({ length: 144 }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  });
  const data = Float32Array.from({ length: 48 * 48 }, (_, i) => {
    return levels[12 * (Math.floor(i / 48) >> 2) + ((i % 48) >> 2)];
  });
  return { width: 48, height: 48, data };
}

const random = fc.nat().map(drawPatches);

const waysToMeasure: Record<string, (plane: Plane) => TensorField> = {
  exact: (plane) => structureTensorExact(plane, 1, 4),
  'checkerboard, sigma 1': (plane) => structureTensor(plane, { integrationSigmaPx: 4 }),
  'every pixel, sigma 1.5': (plane) =>
    structureTensor(plane, { gradientSigmaPx: 1.5, integrationSigmaPx: 4 }),
  'halved first, sigma 3': (plane) =>
    structureTensor(plane, { gradientSigmaPx: 3, integrationSigmaPx: 6 }),
};

function transform(plane: Plane, from: (x: number, y: number) => [number, number]): Plane {
  const out = createPlane(plane.width, plane.height);
  for (let y = 0; y < plane.height; y++) {
    for (let x = 0; x < plane.width; x++) {
      const [sx, sy] = from(x, y);
      out.data[y * plane.width + x] = plane.data[sy * plane.width + sx];
    }
  }
  return out;
}

const wrap = (rad: number) => rad - Math.PI * Math.round(rad / Math.PI);

/** Calls back for every sample at least `border` px from the edge. */
function inner(
  field: TensorField,
  border: number,
  visit: (i: number, x: number, y: number) => void,
) {
  const edge = Math.ceil(border / field.stepPx);
  for (let y = edge; y < field.height - edge; y++) {
    for (let x = edge; x < field.width - edge; x++) visit(y * field.width + x, x, y);
  }
}

const angleAt = ({ jxx, jxy, jyy }: TensorField, i: number) =>
  orientationRad(jxx[i], jxy[i], jyy[i]);
const coherenceAt = ({ jxx, jxy, jyy }: TensorField, i: number) =>
  coherence(jxx[i], jxy[i], jyy[i]);

describe.each(Object.entries(waysToMeasure))('structure tensor, %s', (name, measure) => {
  const spacings = name.includes('sigma 3') ? [12, 20] : [6, 9, 14];

  it('tells the direction of straight lines', () => {
    for (const spacing of spacings) {
      for (let angleDeg = -86; angleDeg <= 90; angleDeg += 11) {
        const field = measure(drawGrating(size, size, angleDeg * degree, spacing));
        inner(field, 24, (i) => {
          const error = wrap(angleAt(field, i) - angleDeg * degree) / degree;
          expect(Math.abs(error), `${spacing} px, ${angleDeg} deg`).toBeLessThan(0.1);
          expect(coherenceAt(field, i)).toBeGreaterThan(0.99);
        });
      }
    }
  });

  it('turns with the picture by 90 deg and flips with a mirror', () => {
    fc.assert(
      fc.property(random, (plane) => {
        const field = measure(plane);
        const n = field.width;
        const last = plane.width - 1;
        const turned = measure(transform(plane, (x, y) => [y, last - x]));
        const mirrored = measure(transform(plane, (x, y) => [last - x, y]));
        // The checkerboard changes colour in a mirror: it sees the other half of the pixels.
        const most = Math.max(...field.jxx) + Math.max(...field.jyy);
        const tolerance = (name.includes('checkerboard') ? 0.02 : 1e-5) * most;
        const near = (got: number, expected: number) =>
          expect(Math.abs(got - expected)).toBeLessThan(tolerance);
        inner(field, 8, (i, x, y) => {
          const turnedAt = x * n + (n - 1 - y);
          near(turned.jxx[turnedAt], field.jyy[i]);
          near(turned.jxy[turnedAt], -field.jxy[i]);
          near(turned.jyy[turnedAt], field.jxx[i]);
          const mirroredAt = y * n + (n - 1 - x);
          near(mirrored.jxx[mirroredAt], field.jxx[i]);
          near(mirrored.jxy[mirroredAt], -field.jxy[i]);
          near(mirrored.jyy[mirroredAt], field.jyy[i]);
        });
      }),
      { seed: 1, numRuns: 15 },
    );
  });

  it('grows with the square of the contrast and ignores added light', () => {
    fc.assert(
      fc.property(random, fc.double({ min: 0.1, max: 3, noNaN: true }), (plane, gain) => {
        const field = measure(plane);
        const brighter = measure({ ...plane, data: plane.data.map((v) => gain * v + 0.25) });
        field.jxx.forEach((_, i) => {
          const tolerance = 1e-4 * gain * gain * (field.jxx[i] + field.jyy[i]) + 1e-9;
          for (const key of ['jxx', 'jxy', 'jyy'] as const) {
            expect(Math.abs(brighter[key][i] - gain * gain * field[key][i])).toBeLessThan(
              tolerance,
            );
          }
        });
      }),
      { seed: 2, numRuns: 10 },
    );
  });

  it('finds nothing in a flat picture', () => {
    const field = measure({
      width: size,
      height: size,
      data: new Float32Array(size * size).fill(0.4),
    });
    field.jxx.forEach((_, i) => {
      expect(field.jxx[i] + field.jyy[i]).toBeLessThan(1e-12);
    });
  });
});

describe('structureTensor', () => {
  it('measures slopes per full-size pixel whatever the way', () => {
    // Analytic: I = a x + b y has products a a, a b, b b everywhere.
    const data = Float32Array.from({ length: size * size }, (_, i) => {
      return 0.01 * (i % size) - 0.02 * Math.floor(i / size);
    });
    for (const measure of Object.values(waysToMeasure)) {
      const field = measure({ width: size, height: size, data });
      inner(field, 28, (i) => {
        expect(field.jxx[i]).toBeCloseTo(1e-4, 7);
        expect(field.jxy[i]).toBeCloseTo(-2e-4, 7);
        expect(field.jyy[i]).toBeCloseTo(4e-4, 7);
      });
    }
  });

  it('has one sample a step and says where it sits', () => {
    for (const [width, height, factor] of [
      [50, 39, 4],
      [50, 39, 8],
      [33, 64, 3],
      [20, 20, 1],
    ] as const) {
      const plane = drawGrating(width, height, 0.2, 7);
      for (const gradientSigmaPx of [1, 1.4, 2.5]) {
        const field = structureTensor(plane, { gradientSigmaPx, factor });
        expect([field.width, field.height, field.stepPx]).toEqual([
          Math.floor(width / factor),
          Math.floor(height / factor),
          factor,
        ]);
      }
    }
  });

  it('puts a bright spot where it is, in every way', () => {
    const plane = createPlane(size, size);
    plane.data[26 * size + 37] = 1;
    for (const gradientSigmaPx of [1, 1.4, 2.5]) {
      for (const factor of [4, 8]) {
        const field = structureTensorBlocks(plane, gradientSigmaPx, factor);
        let sum = 0;
        let meanX = 0;
        let meanY = 0;
        inner(field, 0, (i, x, y) => {
          const energy = field.jxx[i] + field.jyy[i];
          sum += energy;
          meanX += energy * ((x + 0.5) * factor - 0.5);
          meanY += energy * ((y + 0.5) * factor - 0.5);
        });
        expect(Math.abs(meanX / sum - 37)).toBeLessThan(0.25 * factor);
        expect(Math.abs(meanY / sum - 26)).toBeLessThan(0.25 * factor);
      }
    }
  });

  it('refuses a picture smaller than one step', () => {
    expect(() => structureTensor(createPlane(3, 40))).toThrow(/No grain can be measured/);
  });
});

describe('orientationRad and coherence', () => {
  it('are those of the eigenvectors', () => {
    // Analytic: tensor with eigenvalues 3 along angle + 90 deg and 1 along the angle.
    for (let angleDeg = -89; angleDeg <= 90; angleDeg++) {
      const c = Math.cos(angleDeg * degree);
      const s = Math.sin(angleDeg * degree);
      const tensor = [c * c + 3 * s * s, (1 - 3) * c * s, s * s + 3 * c * c] as const;
      expect(orientationRad(...tensor)).toBeCloseTo(angleDeg * degree, 9);
      expect(coherence(...tensor)).toBeCloseTo(0.5, 9);
    }
    expect(orientationRad(1, 0, 0)).toBe(Math.PI / 2);
    expect(orientationRad(0, 0, 1)).toBe(0);
    expect(Object.is(orientationRad(0, 0, 0), 0)).toBe(true);
    expect(coherence(0, 0, 0)).toBe(0);
  });
});
