import { describe, expect, it } from 'vitest';
import { createBoard } from '../../../src/core/wood/createBoard.js';
import { drawEndGrain } from '../../../src/core/wood/drawEndGrain.js';
import { wideFace } from '../../../src/core/wood/facePlane.js';
import { ringLineAt } from '../../../src/core/wood/ringLineAt.js';
import { bareBoard } from './bareBoard.js';

describe('the drawn end', () => {
  it('has its rings square to the line to the pith, which lies where the board says', () => {
    const board = bareBoard({ pithYMm: 70, pithDepthMm: -15, widthMm: 150, thicknessMm: 30 });
    const { truth } = drawEndGrain({ board, atMm: 300 }, { pxPerMm: 2 });
    expect(truth.pith.xMm).toBeCloseTo(70, 9);
    expect(truth.pith.yMm).toBeCloseTo(-15, 9);
    for (const [x, y] of [
      [10, 5],
      [60, 25],
      [140, 12],
    ] as const) {
      const toPith = Math.atan2(y + 15, x - 70);
      expect(Math.cos(truth.ringLineRad(x, y) - toPith)).toBeCloseTo(0, 9);
      expect(truth.ringWidthMm(x, y)).toBeCloseTo(2, 6);
    }
    // Ring angle to the face: tan = aside / depth from the pith, at mid-thickness.
    expect(truth.ringAngleDeg(100)).toBeCloseTo((Math.atan2(30, 30) * 180) / Math.PI, 6);
    expect(truth.ringAngleDeg(70)).toBeCloseTo(0, 6);
  });

  it('moves its pith along the board by the slope of the stem', () => {
    const board = bareBoard({ slopeInFaceDeg: 3, slopeInDepthDeg: -2 });
    const [a, b] = [100, 500].map(
      (atMm) => drawEndGrain({ board, atMm }, { pxPerMm: 2 }).truth.pith,
    );
    expect((b!.xMm - a!.xMm) / 400).toBeCloseTo(Math.tan((3 * Math.PI) / 180), 9);
    expect((b!.yMm - a!.yMm) / 400).toBeCloseTo(Math.tan((-2 * Math.PI) / 180), 9);
    const field = createBoard(
      bareBoard({ slopeInFaceDeg: 3, slopeInDepthDeg: -2, waviness: 1 }),
    ).field;
    // Where the pith is, age is least in the cross-section.
    const at = field.pithAt(220);
    const age = (y: number, z: number) => {
      const s = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
      field.sample(220, y, z, s);
      return s.ageMm;
    };
    for (const [dy, dz] of [
      [3, 0],
      [-3, 0],
      [0, 3],
      [0, -3],
    ] as const) {
      expect(age(at.yMm + dy, at.zMm + dz)).toBeGreaterThan(age(at.yMm, at.zMm) + 2);
    }
  });

  it('agrees with the long face cut from the same wood', () => {
    const spec = { seed: 8, setting: 'ring-porous', cut: 'rift' } as const;
    const board = createBoard(spec);
    const { truth } = drawEndGrain({ board: spec, atMm: 250 }, { pxPerMm: 2 });
    for (const y of [20, 90, 170]) {
      const line = ringLineAt(board, wideFace(board, 'A'), 250, y);
      // Across the face (v) both planes see the same slope of age, but for the taper.
      const along = Math.abs(Math.sin(truth.ringLineRad(y, 0)));
      const onEnd = truth.ringWidthMm(y, 0) / along;
      const width = line.spacingMm * Math.hypot(line.du, line.dv);
      expect(onEnd).toBeCloseTo(width / Math.abs(line.dv), 6);
    }
  });

  it('darkens with stain and cracks and leaves the truth alone', () => {
    const board = bareBoard({ widthMm: 60, thicknessMm: 25 });
    const mean = (data: ArrayLike<number>) => {
      let sum = 0;
      for (let i = 0; i < data.length; i++) sum += data[i]!;
      return sum / data.length;
    };
    const clean = drawEndGrain({ board }, { pxPerMm: 6 });
    const rough = drawEndGrain({ board, stain: 1, sawMarks: 1, cracks: 4 }, { pxPerMm: 6 });
    expect(mean(rough.image.data)).toBeLessThan(mean(clean.image.data) - 3);
    expect(rough.truth.pith).toEqual(clean.truth.pith);
  });
});
