import { describe, expect, it } from 'vitest';
import type { JointGapReading } from '../../../../src/core/results/dryClampResult.js';
import { judgeDryJoint } from '../../../../src/core/shop/joint/judgeDryJoint.js';
import { measureJointGap } from '../../../../src/core/shop/joint/measureJointGap.js';
import { drawJoint } from './drawJoint.js';

function measured(pxPerMm: number, gapMm: (xMm: number) => number, seed: number, floor = 0.1) {
  const plane = drawJoint({ pxPerMm, lengthMm: 60, gapMm, seed, floor });
  // The line is put 1 px beside the joint, as a hand would.
  const y = plane.height / 2 + 1;
  return measureJointGap(plane, { x1: 0, y1: y, x2: plane.width, y2: y }, pxPerMm);
}

const sides = [
  { name: 'upper rail', spareMm: 2 },
  { name: 'strip', spareMm: 0.4, isStrip: true },
] as const;

describe('the gap of a drawn dry joint', () => {
  it.each([0.1, 0.25])('is measured at 20 px/mm and more, dark gap of floor %d', (floor) => {
    for (const pxPerMm of [20, 30]) {
      for (const gap of [0.1, 0.2, 0.5, 1]) {
        const { readings } = measured(pxPerMm, () => gap, 11, floor);
        const told = readings.flatMap(({ gapMm }) => (gapMm === null ? [] : [gapMm]));
        expect(told.length / readings.length).toBeGreaterThan(0.6);
        const errors = told.map((gapMm) => gapMm - gap);
        const rms = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
        expect(rms).toBeLessThan(Math.max(0.04, 0.07 * gap));
      }
    }
  });

  it('is not made up where there is none', () => {
    for (const pxPerMm of [6, 10, 20]) {
      for (const seed of [1, 2, 3, 4]) {
        const { readings } = measured(pxPerMm, () => 0, seed);
        const told = readings.filter(({ gapMm }) => gapMm !== null).length;
        expect(told / readings.length).toBeLessThanOrEqual(0.1);
      }
    }
  });

  it('covers the truth with its errors', () => {
    let inside = 0;
    let count = 0;
    for (const pxPerMm of [10, 20, 30]) {
      for (const gap of [0.2, 0.4, 0.8]) {
        for (const { gapMm, gapSeMm } of measured(pxPerMm, () => gap, 21).readings) {
          if (gapMm === null) continue;
          count++;
          if (Math.abs(gapMm - gap) <= 2 * gapSeMm!) inside++;
        }
      }
    }
    expect(count).toBeGreaterThan(150);
    expect(inside / count).toBeGreaterThan(0.9);
  });

  it('says at 6 px/mm that paper cannot be seen, and what it would take', () => {
    const gap = measured(6, () => 0.05, 5);
    const result = judgeDryJoint({ ...gap, sides, pxPerMm: 6 });
    expect(result.verdict).toBe('cannot tell');
    expect(result.shape).toBeNull();
    // Two pixels across a slip of paper of 0.1 mm.
    expect(result.neededPxPerMm).toBe(20);
    expect(result.notes.join(' ')).toMatch(/20 px\/mm/);
  });

  it('still sees a wide gap at 6 px/mm', () => {
    const result = judgeDryJoint({ ...measured(6, () => 0.8, 5), sides, pxPerMm: 6 });
    expect(result.verdict).toBe('dress');
  });

  it.each([
    ['hollow', (x: number) => 0.6 * (1 - ((x - 30) / 30) ** 2)],
    ['convex', (x: number) => 0.6 * ((x - 30) / 30) ** 2],
    ['open left', (x: number) => 0.6 * (1 - x / 60)],
    ['open right', (x: number) => (0.6 * x) / 60],
  ] as const)('reads a %s joint and dresses the rail', (shape, gapMm) => {
    const result = judgeDryJoint({ ...measured(24, gapMm, 8), sides, pxPerMm: 24 });
    expect(result.verdict).toBe('dress');
    expect(result.shape).toBe(shape);
    expect(result.dress!.piece).toBe('upper rail');
    expect(result.dress!.takeMm).toBeGreaterThan(0.45);
    expect(result.dress!.takeMm).toBeLessThan(0.75);
    expect(result.dress!.isEnough).toBe(true);
  });

  it('lets paper-thin gaps be clamped out', () => {
    const result = judgeDryJoint({ ...measured(30, () => 0.03, 9), sides, pxPerMm: 30 });
    expect(result.verdict).toBe('closes');
    expect(result.words.join(' ')).toMatch(/light pressure/);
  });
});

describe('the judgement', () => {
  const open = (gaps: number[]): JointGapReading[] =>
    gaps.map((gapMm, index) => ({ atMm: 50 * index, gapMm, gapSeMm: 0, atMostMm: gapMm }));

  it('says when no piece has the width', () => {
    const poor = [
      { name: 'upper rail', spareMm: 0.2 },
      { name: 'strip', spareMm: 0.1, isStrip: true },
    ] as const;
    const result = judgeDryJoint({ readings: open([0, 0.3, 0.5, 0.3, 0]), sides: poor });
    expect(result.dress).toEqual({
      piece: 'upper rail',
      takeMm: 0.5,
      spareLeftMm: -0.3,
      isEnough: false,
    });
    expect(result.words.join(' ')).toMatch(/\(0.3 mm\) short/);
  });

  it('goes to the strip only when the rail has nothing', () => {
    const strip = [
      { name: 'upper rail', spareMm: 0.1 },
      { name: 'strip', spareMm: 1, isStrip: true },
    ] as const;
    expect(judgeDryJoint({ readings: open([0.4, 0.1, 0.4]), sides: strip }).dress!.piece).toBe(
      'strip',
    );
  });

  it('needs no photo: feeler gauges do', () => {
    expect(judgeDryJoint({ readings: open([0.05, 0.1, 0]), sides }).verdict).toBe('closes');
    expect(judgeDryJoint({ readings: [], sides }).verdict).toBe('cannot tell');
  });
});
