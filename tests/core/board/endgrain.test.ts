import { describe, expect, it } from 'vitest';
import { pithOf } from '../../../src/core/board/pithOf.js';
import { endgrainPanel } from '../../../src/core/pipeline/endgrainPanel.js';
import { drawEndGrain } from '../../../src/core/wood/drawEndGrain.js';
import { expectFinite } from '../pipeline/expectFinite.js';

const photoOf = (image: {
  width: number;
  height: number;
  data: Uint8Array | Uint8ClampedArray;
}) => ({
  image,
  pxPerMm: 8,
  widthMm: image.width / 8,
  heightMm: image.height / 8,
  notes: [],
});

describe('pithOf', () => {
  it('finds the centre of exact circles, also outside the board', () => {
    for (const [px, py] of [
      [60, 12],
      [-40, 90],
      [75, -30],
    ] as const) {
      const normals = Array.from({ length: 400 }, (_, k) => {
        const [xMm, yMm] = [(k % 40) * 3 + 1, Math.floor(k / 40) * 3 + 0.5];
        const r = Math.hypot(px - xMm, py - yMm);
        return { xMm, yMm, nx: (px - xMm) / r, ny: (py - yMm) / r, weight: 1 };
      });
      const pith = pithOf(normals, 120)!;
      expect(pith.xMm).toBeCloseTo(px, 3);
      expect(pith.yMm).toBeCloseTo(py, 3);
      expect(pith.missRad).toBeLessThan(1e-6);
    }
  });
});

describe('endgrainPanel', () => {
  for (const setting of ['softwood', 'ring-porous'] as const) {
    it(`reads drawn ${setting} ends: ring angle within 3 deg rms of the model`, () => {
      const board = { seed: 611, setting, cut: 'flatsawn', widthMm: 150, thicknessMm: 30 } as const;
      const { image, truth } = drawEndGrain({ board }, { pxPerMm: 8 });
      const result = endgrainPanel(photoOf(image));
      expectFinite(result);
      const squares = result.ringAngle.map(
        ({ xMm, angleDeg }) => (angleDeg - truth.ringAngleDeg(xMm, 6)) ** 2,
      );
      expect(Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length)).toBeLessThan(3);
      const { flatsawn, rift, quartered } = result.cut!;
      expect(flatsawn + rift + quartered).toBeCloseTo(1, 9);
      // A flatsawn board is rift at its edges (common practice, no published source).
      const angles = result.ringAngle.map((ring) => ring.angleDeg);
      expect(Math.min(...angles)).toBeLessThan(15);
      expect(angles[0]).toBeGreaterThan(30);
      expect(angles.at(-1)).toBeGreaterThan(30);
    });
  }

  it('says so when there are no rings', () => {
    const data = new Uint8Array(3 * 400 * 160).fill(150);
    const result = endgrainPanel(photoOf({ width: 400, height: 160, data }));
    expect(result.pith).toBeNull();
    expect(result.cut).toBeNull();
    expect(result.notes.join(' ')).toMatch(/cannot tell/i);
  });
});
