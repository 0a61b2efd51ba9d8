import { describe, expect, it } from 'vitest';
import { cupping } from '../../../src/core/board/endGrain/cupping.js';
import { fitRings } from '../../../src/core/board/endGrain/fitRings.js';
import { pithFromRings } from '../../../src/core/board/endGrain/pithFromRings.js';
import {
  acrossRings,
  depthToPithMm,
  familyAbout,
} from '../../../src/core/board/endGrain/ringFamily.js';
import { ringsByHand } from '../../../src/core/board/endGrain/ringsByHand.js';
import { endgrainPanel } from '../../../src/core/pipeline/endgrainPanel.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { drawEndGrain } from '../../../src/core/wood/drawEndGrain.js';
import type { EndGrainSpec } from '../../../src/core/wood/endGrainSpec.js';
import type { EndGrainTruth } from '../../../src/core/wood/endGrainTruth.js';
import { expectFinite } from '../pipeline/expectFinite.js';

const pxPerMm = 6;
const photoOf = (image: {
  width: number;
  height: number;
  data: Uint8Array | Uint8ClampedArray;
}) => ({
  image,
  pxPerMm,
  widthMm: image.width / pxPerMm,
  heightMm: image.height / pxPerMm,
  notes: [],
});

function read(spec: EndGrainSpec) {
  const { image, truth } = drawEndGrain(spec, { pxPerMm });
  const result = endgrainPanel(photoOf(image));
  expectFinite(result);
  const squares = result.ringAngle.map(
    ({ xMm, angleDeg }) => (angleDeg - truth.ringAngleDeg(xMm, 6)) ** 2,
  );
  const rmsDeg = Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length);
  return { result, truth, rmsDeg };
}

/** The model's median ring, every ring counted once: places weigh by 1 / width. */
function medianRingMm(truth: EndGrainTruth): number {
  const widths: number[] = [];
  for (let x = 2; x < truth.widthMm; x += 0.7) {
    for (let y = 2; y < truth.thicknessMm; y += 3) widths.push(truth.ringWidthMm(x, y));
  }
  widths.sort((a, b) => a - b);
  const half = widths.reduce((sum, w) => sum + 1 / w, 0) / 2;
  let sum = 0;
  return widths.find((w) => (sum += 1 / w) > half)!;
}

describe('a family of rings', () => {
  it('measures depth as distance to the pith does, and straight rings without a break', () => {
    const pith = { xMm: 40, yMm: -300 };
    const family = familyAbout(pith, 60, 10);
    const from = Math.hypot(60 - 40, 10 + 300);
    const depth = depthToPithMm(family);
    for (const [x, y] of [
      [0, 0],
      [120, 25],
      [61, 3],
    ] as const) {
      expect(depth(x, y)).toBeCloseTo(from - Math.hypot(x - 40, y + 300), 9);
      const [vx, vy] = acrossRings(family, x, y);
      expect(vx * (pith.yMm - y) - vy * (pith.xMm - x)).toBeCloseTo(0, 9);
    }
    const straight = depthToPithMm({ ...family, curvature: 0, normalRad: 0 });
    expect(straight(73, 5)).toBeCloseTo(13, 12);
  });

  it('is fitted exactly to exact circles, from a start that is off', () => {
    for (const pith of [
      { xMm: -40, yMm: 90 },
      { xMm: 75, yMm: -30 },
      { xMm: 60, yMm: 900 },
    ]) {
      let family = familyAbout({ xMm: pith.xMm + 6, yMm: pith.yMm - 5 }, 60, 12);
      for (let round = 0; round < 6; round++) {
        const cells = Array.from({ length: 96 }, (_, k) => {
          const [xMm, yMm] = [(k % 24) * 5 + 2.5, Math.floor(k / 24) * 6 + 3];
          const [vx, vy] = acrossRings(family, xMm, yMm);
          const off = Math.atan2(pith.yMm - yMm, pith.xMm - xMm) - Math.atan2(vy, vx);
          const offRad = off - Math.PI * Math.round(off / Math.PI);
          return { xMm, yMm, offRad, seRad: 0.01, share: 1 };
        });
        family = fitRings(cells, family)!.family;
      }
      const found = pithFromRings({
        family,
        covariance: [1e-12, 0, 1e-16],
        waveRad: 0,
        strayAt: () => ({ rad: 0, seRad: 0 }),
      });
      expect(found).toMatchObject({ kind: 'told' });
      if (found.kind !== 'told') continue;
      expect(found.xMm).toBeCloseTo(pith.xMm, 2);
      expect(found.yMm).toBeCloseTo(pith.yMm, 2);
    }
  });
});

describe('rings marked by hand', () => {
  it('meet where the normals of two tangents meet', () => {
    const pith = { xMm: 30, yMm: 140 };
    const tangentAt = (xMm: number, yMm: number) => {
      const r = Math.hypot(xMm - pith.xMm, yMm - pith.yMm);
      const [tx, ty] = [(4 * (yMm - pith.yMm)) / r, (-4 * (xMm - pith.xMm)) / r];
      return { x1Mm: xMm - tx, y1Mm: yMm - ty, x2Mm: xMm + tx, y2Mm: yMm + ty };
    };
    const tangents = [tangentAt(10, 12), tangentAt(95, 8)];
    const found = pithFromRings(ringsByHand({ tangents, pith: null }, 100, 20)!);
    expect(found.kind === 'told' && found.xMm).toBeCloseTo(30, 4);
    expect(found.kind === 'told' && found.yMm).toBeCloseTo(140, 4);
  });

  it('holds one tangent across the width and leaves the pith untold', () => {
    const { image } = drawEndGrain(
      { board: { seed: 3, setting: 'softwood', widthMm: 60, thicknessMm: 20 } },
      { pxPerMm },
    );
    const tangents = [{ x1Mm: 20, y1Mm: 14, x2Mm: 30, y2Mm: 4 }];
    const result = endgrainPanel(photoOf(image), { placed: { tangents, pith: null } });
    expect(result.found).toBe('placed');
    expect(result.pith).toBeNull();
    for (const ring of result.ringAngle) {
      expect(ring.angleDeg).toBeCloseTo(45, 6);
      expect(ring.leanDeg).toBeCloseTo(-45, 6);
    }
    expect(result.cut).toEqual({ flatsawn: 0, rift: 1, quartered: 0 });
    expect(result.notes.join(' ')).toMatch(/laid by hand.*Cannot tell the pith from one tangent/);
  });
});

describe('cupping', () => {
  const size = { widthMm: 150, thicknessMm: 25 };
  const hardMaple = { radial: 0.00165, tangential: 0.00353 };
  const about = (depthMm: number) =>
    Array.from({ length: 75 }, (_, k) =>
      Math.abs((Math.atan2(2 * k + 1 - 75, depthMm) * 180) / Math.PI),
    );

  // The side away from the heart goes hollow as flatsawn stock dries (common practice, no
  // published source); quartered stock stays flat (same).
  it('hollows the face away from the heart, and neither of quartered stock', () => {
    const flatsawn = cupping(about(85), about(60), size, hardMaple);
    expect(flatsawn.hollow).toBe('top');
    expect(cupping(about(60), about(85), size, hardMaple).hollow).toBe('bottom');
    expect(cupping(Array(9).fill(88), Array(9).fill(87), size, hardMaple).hollow).toBeNull();
    // Strain rotation, trade.md 1.7 (derived there): 0 to 90 deg differs by C_T - C_R.
    const most = cupping([0], [90], size, hardMaple);
    expect(most.hollowMm).toBeCloseTo((0.00188 * 4 * 150 ** 2) / (8 * 25), 9);
    expect(cupping([0], [90], size, null).hollowMm).toBeNull();
  });
});

describe('endgrainPanel', () => {
  it('reads a flatsawn end: rift at its edges, ring angle within 2 deg, pith within its error', () => {
    const board = {
      seed: 611,
      setting: 'softwood',
      widthMm: 130,
      thicknessMm: 28,
      pithYMm: 60,
      pithDepthMm: 78,
    } as const;
    const { result, truth, rmsDeg } = read({ board });
    expect(rmsDeg).toBeLessThan(2);
    const { flatsawn, rift, quartered } = result.cut!;
    expect(flatsawn + rift + quartered).toBeCloseTo(1, 9);
    // A flatsawn board is rift at its edges (common practice, no published source).
    const angles = result.ringAngle.map((ring) => ring.angleDeg);
    expect(flatsawn).toBeGreaterThan(0.4);
    expect(Math.min(...angles)).toBeLessThan(12);
    expect(angles[0]).toBeGreaterThan(30);
    expect(angles.at(-1)).toBeGreaterThan(30);
    const off = Math.hypot(result.pith!.xMm - truth.pith.xMm, result.pith!.yMm - truth.pith.yMm);
    expect(off).toBeLessThan(3 * result.pith!.seMm);
    expect(off).toBeLessThan(0.1 * Math.hypot(65 - truth.pith.xMm, 14 - truth.pith.yMm));
    expect(result.cupping!.hollow).toBe('top');
    expect(result.sawMarks).toBe(false);
    expect(result.ringWidthMm.median! / medianRingMm(truth)).toBeGreaterThan(0.88);
    expect(result.ringWidthMm.median! / medianRingMm(truth)).toBeLessThan(1.12);
  });

  it('reads faint rings through saw marks, stain and cracks', () => {
    const board = {
      seed: 612,
      setting: 'diffuse-porous',
      widthMm: 110,
      thicknessMm: 26,
      pithYMm: 40,
      pithDepthMm: 12,
    } as const;
    const { result, truth } = read({ board, sawMarks: 1, stain: 1, cracks: 4 });
    expect(result.sawMarks).toBe(true);
    expect(result.ringWidthMm.median! / medianRingMm(truth)).toBeGreaterThan(0.85);
    expect(result.ringWidthMm.median! / medianRingMm(truth)).toBeLessThan(1.15);
    const off = Math.hypot(result.pith!.xMm - truth.pith.xMm, result.pith!.yMm - truth.pith.yMm);
    expect(off).toBeLessThan(4);
    const clear = result.ringAngle.filter(({ xMm }) => Math.abs(xMm - truth.pith.xMm) > 10);
    const squares = clear.map((r) => (r.angleDeg - truth.ringAngleDeg(r.xMm, 6)) ** 2);
    expect(Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length)).toBeLessThan(4);
  });

  it('says so when there are no rings: blank paper, and noise', () => {
    const random = createRandom(5);
    for (const level of [() => 150, () => 100 + 100 * random.next()]) {
      const data = Uint8Array.from({ length: 3 * 360 * 120 }, level);
      const result = endgrainPanel(photoOf({ width: 360, height: 120, data }));
      expect(result.pith).toBeNull();
      expect(result.cut).toBeNull();
      expect(result.ringAngle).toEqual([]);
      expect(result.notes.join(' ')).toMatch(/cannot tell/i);
    }
  });

  it('mirrors with the photo', () => {
    const board = { seed: 614, setting: 'softwood', widthMm: 90, thicknessMm: 24 } as const;
    const { image } = drawEndGrain({ board: { ...board, cut: 'rift' } }, { pxPerMm });
    const { width, height, data } = image;
    const mirrored = Uint8Array.from(data, (_, i) => {
      const [pixel, channel] = [Math.floor(i / 3), i % 3];
      const [x, y] = [pixel % width, Math.floor(pixel / width)];
      return data[3 * (y * width + width - 1 - x) + channel]!;
    });
    const here = endgrainPanel(photoOf(image));
    const there = endgrainPanel(photoOf({ width, height, data: mirrored }));
    const back = [...there.ringAngle].reverse();
    for (const [i, ring] of here.ringAngle.entries()) {
      expect(back[i]!.angleDeg).toBeCloseTo(ring.angleDeg, 0);
    }
  });
});
