import { describe, expect, it } from 'vitest';
import { blockTensor } from '../../../src/core/grain/blockTensor.js';
import { carryAlongGrain } from '../../../src/core/grain/carryAlongGrain.js';
import { grainField } from '../../../src/core/grain/grainField.js';
import type { Plane } from '../../../src/core/image/plane.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { drawGrating } from '../filter/drawGrating.js';

const rad = Math.PI / 180;
/** Angle between two grain directions, deg, 0..90. */
const apartDeg = (a: number, b: number) => Math.abs((Math.asin(Math.sin(a - b)) * 180) / Math.PI);

describe('blockTensor', () => {
  it('averages the products of the slopes and leaves a narrow rest out', () => {
    const [width, height] = [70, 50];
    // Bends along x only: gx = x - 30 and gy = 3 wherever the mirrored border is out of reach.
    const data = Float32Array.from({ length: width * height }, (_, i) => {
      const [x, y] = [i % width, Math.floor(i / width)];
      return (x - 30) ** 2 / 2 + 3 * y;
    });
    const tensor = blockTensor({ width, height, data }, 0.8, 20, 4);
    expect([tensor.width, tensor.height, tensor.stepMm]).toEqual([3, 2, 5]);
    // Block (1, 1) covers x = 20 .. 39 and y = 20 .. 39: mean of (x - 30)^2 is 33.5, of x - 30 is -0.5.
    expect(tensor.jxx[4]).toBeCloseTo(33.5, 3);
    expect(tensor.jxy[4]).toBeCloseTo(-1.5, 3);
    expect(tensor.jyy[4]).toBeCloseTo(9, 3);
  });

  it('of a grating has the energy 2 pi^2 (a / s)^2, all of it across the lines', () => {
    const plane = drawGrating(320, 320, 30 * rad, 16);
    const tensor = blockTensor(plane, 0.8, 32, 4);
    // Gaussian derivative of scale 0.8 px: amplitude times exp(-(2 pi 0.8 / 16)^2 / 2).
    const amplitude = 0.3 * Math.exp(-0.5 * ((2 * Math.PI * 0.8) / 16) ** 2);
    const energy = 2 * Math.PI ** 2 * (amplitude / 16) ** 2;
    const i = 5 * tensor.width + 5;
    expect((tensor.jxx[i]! + tensor.jyy[i]!) / energy).toBeCloseTo(1, 1);
  });
});

describe('carryAlongGrain', () => {
  const angle = 25 * rad;
  const along = (value: number) => new Float32Array(400).fill(value);
  const field = {
    width: 20,
    height: 20,
    blockPx: 10,
    cos: along(Math.cos(angle)),
    sin: along(Math.sin(angle)),
  };

  it('leaves lines that run along the grain as they are', () => {
    const plane = drawGrating(200, 200, angle, 20);
    const carried = carryAlongGrain(plane, field, 20);
    expect(greatestDifference(plane, carried)).toBeLessThan(0.02);
  });

  it('takes away what ends after a few pixels', () => {
    const random = createRandom(3);
    const data = Float32Array.from({ length: 200 * 200 }, () => random.normal());
    const carried = carryAlongGrain({ width: 200, height: 200, data }, field, 20);
    expect(rms(carried.data)).toBeLessThan(0.3 * rms(data));
  });

  it('does not care which way along the grain a direction points', () => {
    const plane = drawGrating(200, 200, 40 * rad, 20);
    const flipped = { ...field, cos: field.cos.map((v) => -v), sin: field.sin.map((v) => -v) };
    const there = carryAlongGrain(plane, field, 12);
    const back = carryAlongGrain(plane, flipped, 12);
    expect(greatestDifference(there, back)).toBeLessThan(1e-5);
  });
});

describe('grainField', () => {
  const pxPerMm = 4;
  const angles = [-80, -45, -10, 0, 3, 10, 30, 45, 60, 80, 90];

  it.each(angles)('reads lines at %d deg to 0.2 deg up to the edge, and is sure of them', (deg) => {
    const field = grainField(drawGrating(200, 200, deg * rad, 12), pxPerMm);
    const seen = { apart: 0, coherence: 1, se: 0, angle: 0 };
    forInner(field, 0, (i) => {
      seen.apart = Math.max(seen.apart, apartDeg(field.angleRad[i]!, deg * rad));
      seen.angle = Math.max(seen.angle, Math.abs(field.angleRad[i]!));
      seen.coherence = Math.min(seen.coherence, field.coherence[i]!);
      seen.se = Math.max(seen.se, field.angleSeRad[i]! / rad);
    });
    expect(seen.apart).toBeLessThan(0.2);
    expect(seen.angle).toBeLessThanOrEqual(Math.PI / 2 + 1e-6);
    expect(seen.coherence).toBeGreaterThan(0.95);
    expect(seen.se).toBeLessThan(1);
  });

  it('reads the same angle at twice the scale', () => {
    const coarse = grainField(drawGrating(200, 200, 17 * rad, 12), 4);
    const fine = grainField(drawGrating(400, 400, 17 * rad, 24), 8);
    expect(fine.stepMm).toBeCloseTo(coarse.stepMm, 9);
    const middle = (coarse.height >> 1) * coarse.width + (coarse.width >> 1);
    expect(apartDeg(fine.angleRad[middle]!, coarse.angleRad[middle]!)).toBeLessThan(0.1);
  });

  it('mirrors the angle when the panel is mirrored', () => {
    const plane = drawGrating(200, 200, 12 * rad, 14);
    const mirrored = { ...plane, data: Float32Array.from(plane.data) };
    for (let y = 0; y < 200; y++) mirrored.data.subarray(200 * y, 200 * (y + 1)).reverse();
    const [there, back] = [grainField(plane, pxPerMm), grainField(mirrored, pxPerMm)];
    let most = 0;
    forInner(there, 6, (i) => {
      const x = i % there.width;
      const opposite = i - x + (there.width - 1 - x);
      most = Math.max(most, apartDeg(back.angleRad[opposite]!, -there.angleRad[i]!));
    });
    expect(most).toBeLessThan(0.1);
  });

  it('knows that noise has no direction: wide errors where lines claim narrow ones', () => {
    const random = createRandom(8);
    const noise = Float32Array.from({ length: 240 * 240 }, () => 0.05 * random.normal());
    const lines = grainField(drawGrating(240, 240, 0.2, 12), pxPerMm);
    const nothing = grainField({ width: 240, height: 240, data: noise }, pxPerMm);
    expect(median(nothing.angleSeRad)).toBeGreaterThan(3 * median(lines.angleSeRad));
  });

  it('says plainly on a blank face that it knows nothing, in finite numbers', () => {
    const field = grainField(
      { width: 120, height: 120, data: new Float32Array(120 * 120).fill(-1) },
      pxPerMm,
    );
    expect(field.coherence.every((c) => c < 0.01)).toBe(true);
    expect(field.angleRad.every(Number.isFinite)).toBe(true);
    expect(field.angleSeRad.every(Number.isFinite)).toBe(true);
  });
});

function forInner(
  field: { width: number; height: number },
  border: number,
  each: (i: number) => void,
): void {
  for (let y = border; y < field.height - border; y++) {
    for (let x = border; x < field.width - border; x++) each(y * field.width + x);
  }
}

function greatestDifference(a: Plane, b: Plane): number {
  let most = 0;
  for (let y = 45; y < a.height - 45; y++) {
    for (let x = 45; x < a.width - 45; x++) {
      const i = y * a.width + x;
      most = Math.max(most, Math.abs(a.data[i]! - b.data[i]!));
    }
  }
  return most;
}

const rms = (v: Float32Array) => Math.sqrt(v.reduce((s, x) => s + x * x, 0) / v.length);
const median = (v: Float32Array) => Float32Array.from(v).sort()[v.length >> 1]!;
