import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossGrainCoordinate } from '../../../src/core/seam/acrossGrainCoordinate.js';
import { blockRowsPx, carriedBlocks } from '../../../src/core/seam/carriedBlocks.js';
import { carriedProfile } from '../../../src/core/seam/carriedProfile.js';
import { gapCarryMm } from '../../../src/core/seam/gapCarry.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamStrip } from '../../../src/core/seam/seamStrip.js';
import { type SideField, sideField } from '../../../src/core/seam/sideField.js';
import { gratingPlanes, ripAt } from './gratingJoint.js';

const rad = Math.PI / 180;

/** Straight grain at one angle, 200 mm long. */
function straight(angleDeg: number): SideField {
  const n = 200;
  const all = (value: number) => new Float64Array(n).fill(value);
  return {
    stepMm: 1,
    angleRad: all(angleDeg * rad),
    scalesRad: [],
    angleSeRad: all(0.01),
    coherence: all(1),
    energy: all(1),
  };
}

describe('gapCarryMm', () => {
  it('of straight grain is g cot theta', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 89, noNaN: true }),
        fc.double({ min: -2, max: 6, noNaN: true }),
        fc.boolean(),
        (deg, gap, mirrored) => {
          const angle = mirrored ? -deg : deg;
          const field = straight(angle);
          const carried = gapCarryMm(field, field, 100, gap);
          expect(carried).toBeCloseTo(gap / Math.tan(angle * rad), 6);
        },
      ),
    );
  });

  it('of grain turning from 20 to 40 deg over the gap is the integral of the cotangent', () => {
    // integral of g cot over a turn from a to b = g ln(sin b / sin a) / (b - a).
    const exact = (4 * Math.log(Math.sin(40 * rad) / Math.sin(20 * rad))) / (20 * rad);
    expect(gapCarryMm(straight(20), straight(40), 100, 4)).toBeCloseTo(exact, 1);
  });

  it('turns the short way through 90 deg', () => {
    expect(Math.abs(gapCarryMm(straight(85), straight(-85), 100, 3))).toBeLessThan(0.05);
  });

  it('stays finite where lines run along the joint', () => {
    expect(Number.isFinite(gapCarryMm(straight(0), straight(0), 100, 3))).toBe(true);
  });
});

describe('acrossGrainCoordinate', () => {
  it('grows by |sin theta| per mm and stands still along the grain', () => {
    for (const deg of [0, 7, -30, 90]) {
      const u = acrossGrainCoordinate(straight(deg), straight(deg), 400, 0.25);
      expect(u[399]).toBeCloseTo(100 * Math.abs(Math.sin(deg * rad)), 6);
    }
  });

  it('takes the mean direction of both sides, also about 90 deg', () => {
    const u = acrossGrainCoordinate(straight(10), straight(20), 400, 0.25);
    expect(u[399]).toBeCloseTo(100 * Math.sin(15 * rad), 6);
    const v = acrossGrainCoordinate(straight(80), straight(-80), 400, 0.25);
    expect(v[399]).toBeCloseTo(100, 6);
  });
});

describe('carriedProfile', () => {
  const board = {
    spacingMm: 4,
    contrast: 0.1,
    pxPerMm: 6,
    widthMm: 120,
    heightMm: 40,
    seamYMm: 20,
  };

  it.each([15, 40, 75, -30])('of straight lines at %d deg is what they are at the line', (deg) => {
    const planes = gratingPlanes({ ...board, angleDeg: deg });
    const strip = seamStrip(planes.logLuminance, 6, seamFrame(ripAt(20, 120)), 6, 20, 20);
    for (const side of [-1, 1] as const) {
      const { value, stepMm } = carriedProfile(strip, straight(deg), 0, side);
      let worst = 0;
      value.forEach((v, n) => {
        const x = (n + 0.5) * stepMm;
        if (Number.isNaN(v) || x < 10 || x > 110) return;
        const phase = (2 * Math.PI * (20 * Math.cos(deg * rad) - x * Math.sin(deg * rad))) / 4;
        worst = Math.max(worst, Math.abs(v + 1 - 0.1 * Math.cos(phase)));
      });
      expect(worst).toBeLessThan(0.01);
    }
  });

  it('is unread where no line reaches the joint', () => {
    const planes = gratingPlanes({ ...board, angleDeg: 0 });
    const strip = seamStrip(planes.logLuminance, 6, seamFrame(ripAt(20, 120)), 6, 20, 20);
    expect([...carriedProfile(strip, straight(0), 0, 1).value].every(Number.isNaN)).toBe(true);
  });
});

describe('sideField', () => {
  /** Both sides of a joint between two straight grains, each side's blocks by itself. */
  function sides(angleA: number, angleB: number) {
    const pxPerMm = 6;
    const board = { spacingMm: 3, contrast: 0.1, widthMm: 120, pxPerMm };
    const rows = blockRowsPx(pxPerMm);
    const heightMm = (2 * 12 * rows) / pxPerMm;
    const planes = gratingPlanes({
      ...board,
      angleDeg: angleA,
      angleBDeg: angleB,
      heightMm,
      seamYMm: heightMm / 2,
    });
    const { width, height, data } = planes.logLuminance;
    const half = (width * height) / 2;
    const above = carriedBlocks(
      { width, height: height / 2, data: data.subarray(0, half) },
      pxPerMm,
    );
    const below = carriedBlocks({ width, height: height / 2, data: data.subarray(half) }, pxPerMm);
    return [sideField(above, heightMm / 2, 0, -1), sideField(below, 0, 0, 1)] as const;
  }

  it.each([
    [6, 6],
    [-10, -10],
    [5, 12],
    [20, -20],
  ])('reads %d deg above and %d deg below, each from its own board', (a, b) => {
    const [above, below] = sides(a, b);
    const middle = above.angleRad.length >> 1;
    expect(above.angleRad[middle]! / rad).toBeCloseTo(a, 0);
    expect(below.angleRad[middle]! / rad).toBeCloseTo(b, 0);
    expect(Math.abs(above.angleRad[middle]! / rad - a)).toBeLessThan(0.4);
    expect(Math.abs(below.angleRad[middle]! / rad - b)).toBeLessThan(0.4);
    expect(above.coherence[middle]).toBeGreaterThan(0.9);
    expect(above.angleSeRad[middle]! / rad).toBeLessThan(2);
  });
});
