import { describe, expect, it } from 'vitest';
import { candidateStock } from '../../../src/core/pipeline/candidateStock.js';
import { cutShares } from '../../../src/core/pipeline/cutShares.js';
import { computeGap } from '../../../src/core/shop/movement/computeGap.js';

const faceHeightMm = 80;
const gap = {
  species: 'white oak',
  acrossMm: 60,
  from: { kind: 'moisture', percent: 7 },
  to: { kind: 'moisture', percent: 12 },
} as const;
const usual = { imaginedDeg: null, end: null, endSide: 'left', faceHeightMm, gap } as const;
const front = { yMm: 10, heightMm: 60 };
/** Strips of 10 mm; the pith `depthMm` below the face at `pithYMm`: tan(angle) = aside / depth. */
const facing = (pithYMm: number, depthMm: number, seDeg: number) => ({
  overPith: null,
  notes: [],
  ringAngle: Array.from({ length: 8 }, (_, k) => {
    const yMm = 10 * k + 5;
    const angleDeg = (180 / Math.PI) * Math.atan2(Math.abs(yMm - pithYMm), depthMm);
    return { yMm, angleDeg: angleDeg as number | null, seDeg };
  }),
});

describe('cutShares', () => {
  it('counts the widths between the angles of the classes, 30 and 60 deg', () => {
    // Over the pith at depth 20: flatsawn within 20 tan 30 = 11.5 mm, quartered beyond 34.6 mm.
    const exact = cutShares(facing(40, 20, 0).ringAngle)!;
    expect(exact.cut).toEqual({ flatsawn: 2 / 8, rift: 4 / 8, quartered: 2 / 8 });
    expect(exact.least).toEqual(exact.cut);
    expect(exact.most).toEqual(exact.cut);
  });

  it('widens with the error of the angles and with what is untold, never past 0 and 1', () => {
    for (const seDeg of [0, 4, 8, 15]) {
      const strips = facing(30, 25, seDeg).ringAngle;
      const whole = cutShares(strips)!;
      const holed = cutShares(strips.map((s, k) => (k % 3 ? s : { ...s, angleDeg: null })))!;
      for (const name of ['flatsawn', 'rift', 'quartered'] as const) {
        for (const { cut, least, most } of [whole, holed]) {
          expect(least[name]).toBeLessThanOrEqual(cut[name] + 1e-12);
          expect(most[name]).toBeGreaterThanOrEqual(cut[name] - 1e-12);
          expect(least[name]).toBeGreaterThanOrEqual(0);
          expect(most[name]).toBeLessThanOrEqual(1 + 1e-12);
        }
        // Whatever the untold places are, the whole board's shares lie within.
        expect(holed.least[name]).toBeLessThanOrEqual(whole.cut[name] + 1e-12);
        expect(holed.most[name]).toBeGreaterThanOrEqual(whole.cut[name] - 1e-12);
      }
    }
  });

  it('tells nothing where more than half of the width is untold', () => {
    const strips = facing(40, 20, 5).ringAngle.map((s, k) =>
      k < 5 ? { ...s, angleDeg: null } : s,
    );
    expect(cutShares(strips)).toBeNull();
    expect(cutShares([])).toBeNull();
  });
});

describe('candidateStock from a face', () => {
  it('has the gap of the ring angle that the face shows, between quartered and flatsawn', () => {
    const even = {
      ...facing(0, 1, 0),
      ringAngle: facing(0, 1, 6).ringAngle.map((strip) => ({ ...strip, angleDeg: 40 })),
    };
    const { ringsBy, gapMm, gapRangeMm } = candidateStock({ ...usual, faceRings: even, front });
    expect(ringsBy).toBe('face');
    const at = (angleDeg: number) =>
      computeGap({ ...gap, rings: { kind: 'angle', angleDeg } }).gapMm;
    // White oak moves less radially than tangentially: steeper rings, a smaller gap.
    expect(gapMm).toBeCloseTo(at(40), 3);
    expect(gapRangeMm![0]).toBeCloseTo(at(46), 3);
    expect(gapRangeMm![1]).toBeCloseTo(at(34), 3);
    expect(at(90)).toBeLessThan(gapRangeMm![0]);
    expect(at(0)).toBeGreaterThan(gapRangeMm![1]);
  });

  it('takes the rings where the front is cut, and the fullest gap where they are untold there', () => {
    const face = facing(5, 15, 5);
    const steep = candidateStock({ ...usual, faceRings: face, front: { yMm: 40, heightMm: 30 } });
    const flat = candidateStock({ ...usual, faceRings: face, front: { yMm: 0, heightMm: 30 } });
    expect(steep.gapMm!).toBeLessThan(flat.gapMm!);
    const holed = {
      ...face,
      ringAngle: face.ringAngle.map((strip, k) => (k === 5 ? { ...strip, angleDeg: null } : strip)),
    };
    const untold = candidateStock({ ...usual, faceRings: holed, front: { yMm: 40, heightMm: 30 } });
    expect(untold.ringsBy).toBeNull();
    expect(untold.gapRangeMm).toBeNull();
    expect(untold.gapMm).toBeCloseTo(computeGap(gap).gapMm, 12);
    expect(untold.notes.join(' ')).toContain('the ring angle is not known');
    expect(untold.cut).not.toBeNull();
  });

  it('lets the end speak before the face', () => {
    const panel = { widthMm: faceHeightMm, heightMm: 25, pxPerMm: 8 };
    const ringAngle = [20, 60].map((xMm) => ({ xMm, angleDeg: 80, seDeg: 2, leanDeg: 80 }));
    const end = {
      ...({ schema: 'seamgrain/endgrain@1', panel, pith: null, pithAtLeastMm: 100 } as const),
      ...({ found: 'photo', ringAngle, cupping: null, sawMarks: false, notes: [] } as const),
      ringWidthMm: { median: null, p10: null, p90: null },
      cut: { flatsawn: 0, rift: 0, quartered: 1 },
    };
    const stock = candidateStock({ ...usual, end, faceRings: facing(40, 60, 5), front });
    expect(stock.ringsBy).toBe('end');
    expect(stock.cut).toEqual(end.cut);
    expect(stock.gapMm).toBeCloseTo(
      computeGap({ ...gap, rings: { kind: 'angle', angleDeg: 80 } }).gapMm,
      3,
    );
  });
});
