import { describe, expect, it } from 'vitest';
import { ringsAtFront } from '../../../src/core/pipeline/ringsAtFront.js';
import { tangentialShare } from '../../../src/core/shop/movement/tangentialShare.js';

const degrees = (rad: number) => (Math.abs(rad) * 180) / Math.PI;
/** Rings about a pith at 20 mm from the left, 30 mm below mid-thickness, over 200 mm. */
const pith = { xMm: 20, depthMm: 30 };
const profile = Array.from({ length: 401 }, (_, k) => {
  const xMm = k / 2;
  return { xMm, angleDeg: degrees(Math.atan2(xMm - pith.xMm, pith.depthMm)) };
});

describe('the rings where a front is cut', () => {
  it('move as the closed form says for that strip alone, and not as the whole board', () => {
    // The mean of cos^2 about a pith has a closed form (tangentialShare, kind pith), so the strip
    // of the profile is checked against the same pith seen from the strip's own left end.
    for (const [fromMm, acrossMm] of [
      [0, 60],
      [50, 90],
      [120, 80],
    ] as const) {
      const strip = ringsAtFront(profile, 200, 200, 'left', fromMm, acrossMm);
      const found = tangentialShare({ kind: 'measured', ringAngle: strip }, acrossMm);
      const exact = tangentialShare(
        { kind: 'pith', xMm: pith.xMm - fromMm, depthMm: pith.depthMm },
        acrossMm,
      );
      expect(found).toBeCloseTo(exact, 3);
    }
    const whole = tangentialShare({ kind: 'pith', ...pith }, 200);
    const far = ringsAtFront(profile, 200, 200, 'left', 120, 80);
    expect(tangentialShare({ kind: 'measured', ringAngle: far }, 80)).toBeLessThan(0.5 * whole);
  });

  it('are mirrored when the right end was photographed, and stretched to the face', () => {
    const left = ringsAtFront(profile, 200, 200, 'left', 30, 50);
    const mirrored = profile.map(({ xMm, angleDeg }) => ({ xMm: 200 - xMm, angleDeg }));
    const right = ringsAtFront(mirrored, 200, 200, 'right', 30, 50);
    right.forEach(({ xMm, angleDeg }, k) => {
      expect(xMm).toBeCloseTo(left[k]!.xMm, 9);
      expect(angleDeg).toBeCloseTo(left[k]!.angleDeg, 9);
    });
    const half = profile.map(({ xMm, angleDeg }) => ({ xMm: xMm / 2, angleDeg }));
    expect(ringsAtFront(half, 100, 200, 'left', 30, 50)).toEqual(left);
    expect(ringsAtFront([], 200, 200, 'left', 30, 50)).toEqual([]);
  });
});
