import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distanceToSegment } from '../../../src/core/geometry/distanceToSegment.js';
import { pointInPolygon } from '../../../src/core/geometry/pointInPolygon.js';

const mm = fc.double({ min: -500, max: 500, noNaN: true });
const segment = fc.record({ x1Mm: mm, y1Mm: mm, x2Mm: mm, y2Mm: mm });

describe('distanceToSegment', () => {
  it('is the way straight down beside it and the way to its end beyond it', () => {
    const line = { x1Mm: 0, y1Mm: 0, x2Mm: 10, y2Mm: 0 };
    expect(distanceToSegment(4, -3, line)).toBeCloseTo(3, 12);
    expect(distanceToSegment(13, 4, line)).toBeCloseTo(5, 12);
    expect(distanceToSegment(-5, 12, line)).toBeCloseTo(13, 12);
  });

  it('is the distance to a point where the segment has no length', () => {
    expect(distanceToSegment(3, 4, { x1Mm: 0, y1Mm: 0, x2Mm: 0, y2Mm: 0 })).toBeCloseTo(5, 12);
  });

  it('is never more than to any point of the segment, and does not care which end is first', () => {
    fc.assert(
      fc.property(mm, mm, segment, fc.double({ min: 0, max: 1, noNaN: true }), (x, y, line, t) => {
        const { x1Mm, y1Mm, x2Mm, y2Mm } = line;
        const d = distanceToSegment(x, y, line);
        const px = x1Mm + t * (x2Mm - x1Mm);
        const py = y1Mm + t * (y2Mm - y1Mm);
        expect(d).toBeLessThanOrEqual(Math.hypot(x - px, y - py) + 1e-9);
        const back = { x1Mm: x2Mm, y1Mm: y2Mm, x2Mm: x1Mm, y2Mm: y1Mm };
        expect(distanceToSegment(x, y, back)).toBeCloseTo(d, 6);
      }),
    );
  });
});

describe('pointInPolygon', () => {
  const ell: [number, number][] = [
    [0, 0],
    [10, 0],
    [10, 4],
    [4, 4],
    [4, 10],
    [0, 10],
  ];

  it('knows the notch of an L from its arms', () => {
    expect(pointInPolygon(2, 8, ell)).toBe(true);
    expect(pointInPolygon(8, 2, ell)).toBe(true);
    expect(pointInPolygon(8, 8, ell)).toBe(false);
    expect(pointInPolygon(-1, 2, ell)).toBe(false);
  });

  it('is outside of nothing', () => {
    expect(pointInPolygon(0, 0, [])).toBe(false);
    expect(pointInPolygon(1, 1, [[0, 0]])).toBe(false);
  });

  it('agrees with the circle that a many-sided polygon stands for', () => {
    const round = Array.from({ length: 720 }, (_, k): [number, number] => {
      const a = (k * Math.PI) / 360;
      return [100 * Math.cos(a), 100 * Math.sin(a)];
    });
    fc.assert(
      fc.property(mm, mm, (x, y) => {
        const r = Math.hypot(x, y);
        fc.pre(Math.abs(r - 100) > 0.01);
        expect(pointInPolygon(x, y, round)).toBe(r < 100);
      }),
    );
  });
});
