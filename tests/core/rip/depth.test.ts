import { describe, expect, it } from 'vitest';
import { createPlane } from '../../../src/core/image/plane.js';
import { forecastFaceRings } from '../../../src/core/pipeline/forecastFaceRings.js';
import { defaultForecastOptions } from '../../../src/core/pipeline/forecastOptions.js';
import { forecastPanel } from '../../../src/core/pipeline/forecastPanel.js';
import { imaginedBoard, imagineFace } from '../../../src/core/pipeline/imagineFace.js';
import { faceRingAngleAt } from '../../../src/core/rip/faceRingAngleAt.js';
import { createBoard } from '../../../src/core/wood/createBoard.js';
import { describeDepth } from '../../../src/report/forecast/describeDepth.js';

const size = { widthMm: 180, heightMm: 130 };
const small = { widthMm: 120, heightMm: 90 };
const wood = { ringWidthMm: 2, contrast: 1, setting: 'softwood' } as const;

/** The model's own ring angle on the face at (x, y): between the normals of ring and face, deg. */
function trueAngleDeg(imagined: Parameters<typeof imaginedBoard>[0], x: number, y: number) {
  const at = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
  createBoard(imaginedBoard(imagined, size)).field.sample(x, y, 0, at);
  return (Math.acos(Math.abs(at.dz) / Math.hypot(at.dx, at.dy, at.dz)) * 180) / Math.PI;
}

describe('the ring angle that the face tells', () => {
  const strip = (yMm: number, angleDeg: number | null, seDeg = 5) => ({ yMm, angleDeg, seDeg });
  const face = {
    ringAngle: [strip(10, 20), strip(20, 30, 8), strip(30, null)],
    ...{ overPith: null, notes: [] },
  };

  it('lies between those of the strips about a height', () => {
    expect(faceRingAngleAt(face, 15)).toEqual({ angleDeg: 25, seDeg: 8 });
    expect(faceRingAngleAt(face, 4)).toEqual({ angleDeg: 20, seDeg: 5 });
    expect(faceRingAngleAt(face, 25)).toBeNull();
    expect(faceRingAngleAt({ ...face, ringAngle: [] }, 25)).toBeNull();
  });
});

describe('planing where no ring angle is given', () => {
  it('goes by the cathedral on the face, with its error', () => {
    const yMm = 40;
    const told = [3, 4].filter((seed) => {
      const imagined = { ...wood, seed, ringAngleDeg: 0 };
      const photo = imagineFace(imagined, size, 3.5);
      const { depth } = forecastPanel(photo, { ...defaultForecastOptions, ripsMm: [yMm] });
      if (depth?.ringAngleDeg == null) {
        expect(depth?.notes.join(' ')).toMatch(/cannot tell/i);
        return false;
      }
      expect(depth.ringAngleFrom).toBe('face');
      const wanted = trueAngleDeg(imagined, size.widthMm / 2, yMm);
      expect(Math.abs(depth.ringAngleDeg - wanted)).toBeLessThan(3 * (depth.ringAngleSeDeg ?? 0));
      const [least, most] = depth.largestRangeMm ?? [9, 0];
      const orEver = (mm: number | null) => mm ?? Number.POSITIVE_INFINITY;
      expect(orEver(least)).toBeLessThanOrEqual(orEver(depth.largestMm));
      expect(orEver(depth.largestMm)).toBeLessThanOrEqual(orEver(most));
      expect(describeDepth(depth, { units: 'mm' })).toMatch(/give or take/);
      return true;
    });
    expect(told.length).toBeGreaterThan(0);
  });

  it('cannot be told from even lines, and says how to tell', () => {
    const photo = imagineFace({ ...wood, seed: 3, ringAngleDeg: 85 }, small, 3);
    const { depth } = forecastPanel(photo, { ...defaultForecastOptions, ripsMm: [40] });
    expect(depth?.ringAngleDeg).toBeNull();
    expect(depth?.largestMm).toBeNull();
    expect(depth?.notes.join(' ')).toMatch(/ring angle/);
  });

  it('cannot be told from a panel that is too wide for one board', () => {
    const plane = createPlane(20, 400);
    const { ringAngle, notes } = forecastFaceRings({ logLuminance: plane, pxPerMm: 1 });
    expect(ringAngle).toEqual([]);
    expect(notes.join(' ')).toMatch(/hardly one board/);
  });

  it('goes by the angle that is given, with no error', () => {
    const photo = imagineFace({ ...wood, seed: 3, ringAngleDeg: 0 }, small, 3);
    const options = { ...defaultForecastOptions, ripsMm: [40], ringAngleDeg: 30 };
    const { depth } = forecastPanel(photo, options);
    expect(depth).toMatchObject({ ringAngleFrom: 'given', ringAngleSeDeg: null });
    expect(depth?.largestRangeMm).toBeNull();
  });
});
