import { describe, expect, it } from 'vitest';
import { faceRingAngle } from '../../../src/core/board/faceRings/faceRingAngle.js';
import { ringCounts } from '../../../src/core/board/faceRings/ringCounts.js';
import { faceRingsPanel } from '../../../src/core/pipeline/faceRingsPanel.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { mixedBoardsPanel } from '../../../src/core/wood/mixedBoardsPanel.js';

const heightMm = 140;
const strips = Float64Array.from({ length: 14 }, (_, k) => 10 * k + 5);

describe('ringCounts', () => {
  it('counts lines drawn at known spacings', () => {
    const [width, height, pxPerMm] = [200, 560, 4];
    // 2.5 mm apart in the upper half, 5 mm in the lower.
    const data = Float32Array.from({ length: width * height }, (_, i) => {
      const y = Math.floor(i / width) / pxPerMm;
      const phase = y < 70 ? y / 2.5 : 28 + (y - 70) / 5;
      return Math.sin(2 * Math.PI * phase);
    });
    const { perMm } = ringCounts({ width, height, data }, pxPerMm, 10);
    expect(perMm[2]).toBeCloseTo(0.4, 1);
    expect(perMm[4]).toBeCloseTo(0.4, 1);
    expect(perMm[9]).toBeCloseTo(0.2, 1);
    expect(perMm[11]).toBeCloseTo(0.2, 1);
  });
});

describe('faceRingAngle', () => {
  it('finds the angles of exact circles about a pith under the face', () => {
    // trade.md 5.1: rings per mm = sin(phi) / w, lines lean by taper / sin(phi), opposite ways.
    const [y0, h, w, taper] = [60, 45, 1.8, 0.0065];
    const sine = (y: number) => (y - y0) / Math.hypot(y - y0, h);
    const perMm = strips.map((y) => Math.abs(sine(y)) / w);
    const slopes = strips.map((y) => -taper / sine(y));
    const found = faceRingAngle({ yMm: strips, perMm, stations: 40 }, slopes, heightMm)!;
    expect(Math.abs(found.pith!.yMm - y0)).toBeLessThan(5);
    for (const { yMm, angleDeg, seDeg } of found.ringAngle) {
      const truth = (Math.atan2(Math.abs(yMm - y0), h) * 180) / Math.PI;
      expect(angleDeg).not.toBeNull();
      expect(Math.abs(angleDeg! - truth)).toBeLessThan(2 * seDeg);
    }
  });

  it('cannot tell from even lines alone: rift and quartered look the same', () => {
    const perMm = strips.map(() => 0.5);
    const found = faceRingAngle(
      { yMm: strips, perMm, stations: 40 },
      strips.map(() => 0.004),
      heightMm,
    )!;
    expect(found.pith).toBeNull();
    expect(found.ringAngle.every((strip) => strip.angleDeg === null)).toBe(true);
  });

  it('has nothing to say without rings', () => {
    const none = strips.map(() => 0);
    expect(faceRingAngle({ yMm: strips, perMm: none, stations: 40 }, none, heightMm)).toBeNull();
  });
});

describe('faceRingsPanel', () => {
  it('says of a drawn flatsawn face that it is rift at its edges', () => {
    const spec = { seed: 500, setting: 'ring-porous', cut: 'flatsawn', widthMm: 140 } as const;
    const boards = [{ board: spec, heightMm: 140 }];
    const { image } = drawPanel(mixedBoardsPanel({ widthMm: 160, boards }), { pxPerMm: 5 });
    const photo = { image, pxPerMm: 5, widthMm: 160, heightMm: 140, notes: [] };
    const { ringAngle, overPith } = faceRingsPanel(photo);
    expect(overPith).not.toBeNull();
    // A flatsawn board is rift at its edges (common practice, no published source).
    const told = ringAngle.map((strip) => strip.angleDeg ?? Number.NaN);
    expect(Math.min(...told)).toBeLessThan(15);
    expect(Math.max(told[0]!, told.at(-1)!)).toBeGreaterThan(30);
  });
});
