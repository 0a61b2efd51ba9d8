import { describe, expect, it } from 'vitest';
import { coherence } from '../../../src/core/grain/coherence.js';
import { orientationRad } from '../../../src/core/grain/orientationRad.js';
import { structureTensor } from '../../../src/core/grain/structureTensor.js';
import { structureTensorExact } from '../../../src/core/grain/structureTensorExact.js';
import type { TensorField } from '../../../src/core/grain/tensorField.js';
import reference from '../../reference/scikitTensor.json' with { type: 'json' };

const { width, height, grid, cases } = reference;
const levels = Buffer.from(reference.levelsBase64, 'base64');
const plane = { width, height, data: Float32Array.from(levels, (level) => level / 255) };

/** Angle and coherence of a field at the grid of the reference. */
function sampleGrid(field: TensorField): { angleDeg: number; coherence: number }[] {
  return Array.from({ length: grid.rows * grid.columns }, (_, n) => {
    const x = (grid.fromPx + (n % grid.columns) * grid.stepPx) / field.stepPx;
    const y = (grid.fromPx + Math.floor(n / grid.columns) * grid.stepPx) / field.stepPx;
    const i = y * field.width + x;
    const tensor = [field.jxx[i], field.jxy[i], field.jyy[i]] as const;
    return {
      angleDeg: (orientationRad(...tensor) * 180) / Math.PI,
      coherence: coherence(...tensor),
    };
  });
}

const apartDeg = (a: number, b: number) => Math.abs(a - b - 180 * Math.round((a - b) / 180));

// Second implementation: scikit-image (tests/reference/scikitTensor.py, output committed).
describe.each(cases)('sigma $gradientSigmaPx and $integrationSigmaPx px', (reference) => {
  const { gradientSigmaPx, integrationSigmaPx } = reference;

  it('the exact tensor agrees with scikit-image within 0.001 deg', () => {
    const field = structureTensorExact(plane, gradientSigmaPx, integrationSigmaPx);
    sampleGrid(field).forEach((sample, n) => {
      expect(Math.abs(sample.coherence - reference.pixelCoherence[n])).toBeLessThan(1e-4);
      if (reference.pixelCoherence[n] < 0.3) return;
      expect(apartDeg(sample.angleDeg, reference.pixelAngleDeg[n])).toBeLessThan(0.001);
    });
  });

  it('the fast tensor agrees within 0.1 deg in the mean and 0.6 deg at worst', () => {
    const field = structureTensor(plane, { gradientSigmaPx, integrationSigmaPx });
    const apart = sampleGrid(field)
      .map((sample, n) => apartDeg(sample.angleDeg, reference.blockAngleDeg[n]))
      .filter((_, n) => reference.blockCoherence[n] > 0.3);
    expect(apart.length).toBeGreaterThan(0.8 * grid.rows * grid.columns);
    expect(apart.reduce((sum, deg) => sum + deg, 0) / apart.length).toBeLessThan(0.1);
    expect(Math.max(...apart)).toBeLessThan(0.6);
  });
});
