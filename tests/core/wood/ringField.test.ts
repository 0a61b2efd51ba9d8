import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBoard } from '../../../src/core/wood/createBoard.js';
import { faceLattice } from '../../../src/core/wood/faceLattice.js';
import { wideFace } from '../../../src/core/wood/facePlane.js';
import { fibreFrame } from '../../../src/core/wood/fibreFrame.js';
import { fibreSlopeAt } from '../../../src/core/wood/fibreSlopeAt.js';
import { growRings } from '../../../src/core/wood/growRings.js';
import type { AgeSample } from '../../../src/core/wood/ringField.js';
import { ringLineAt } from '../../../src/core/wood/ringLineAt.js';
import { bareBoard } from './bareBoard.js';

const sample = (): AgeSample => ({ ageMm: 0, dx: 0, dy: 0, dz: 0 });

describe('the ring field', () => {
  const along = fc.double({ min: 0, max: 600, noNaN: true });
  const across = fc.double({ min: 0, max: 200, noNaN: true });
  const depth = fc.double({ min: -10, max: 30, noNaN: true });
  // Half of the points about the knot, where the gradient has its own term.
  const nearKnotX = fc.oneof(along, fc.double({ min: 280, max: 320, noNaN: true }));
  const nearKnotY = fc.oneof(across, fc.double({ min: 70, max: 110, noNaN: true }));

  it.each([1, 2, 3])('has the gradient that finite differences find (seed %i)', (seed) => {
    const board = createBoard({
      seed,
      setting: 'ring-porous',
      cut: 'flatsawn',
      knots: [{ xMm: 300, yMm: 90, radiusMm: 9 }],
    });
    fc.assert(
      fc.property(nearKnotX, nearKnotY, depth, (x, y, z) => {
        const [at, low, high] = [sample(), sample(), sample()];
        const h = 1e-4;
        board.field.sample(x, y, z, at);
        const slope = (dx: number, dy: number, dz: number) => {
          board.field.sample(x - dx, y - dy, z - dz, low);
          board.field.sample(x + dx, y + dy, z + dz, high);
          return (high.ageMm - low.ageMm) / (2 * h);
        };
        expect(at.dx).toBeCloseTo(slope(h, 0, 0), 4);
        expect(at.dy).toBeCloseTo(slope(0, h, 0), 4);
        expect(at.dz).toBeCloseTo(slope(0, 0, h), 4);
      }),
      { numRuns: 150 },
    );
  });

  it('keeps its fibre within the rings, along the stem', () => {
    const board = createBoard({ seed: 9, setting: 'softwood', spiralDeg: 3 });
    const fibre = { dx: 0, dy: 0, dz: 0 };
    fc.assert(
      fc.property(along, across, depth, (x, y, z) => {
        const at = sample();
        board.field.sample(x, y, z, at);
        board.field.fibre(x, y, z, fibre);
        const dot = fibre.dx * at.dx + fibre.dy * at.dy + fibre.dz * at.dz;
        expect(Math.abs(dot)).toBeLessThan(1e-9);
        expect(Math.abs(fibre.dy / fibre.dx)).toBeLessThan(0.25);
      }),
    );
  });
});

describe('the fibre frame', () => {
  it.each([
    ['A', 'flatsawn'],
    ['B', 'rift'],
  ] as const)('follows the fibre of face %s (%s)', (face, cut) => {
    const board = createBoard({ seed: 4, setting: 'ring-porous', cut });
    const plane = wideFace(board, face);
    const frame = fibreFrame(board, plane, faceLattice(board, plane, 40, 40, 500, 160));
    for (const [u, v] of [
      [60, 60],
      [200, 120],
      [310, 90],
      [480, 140],
    ] as const) {
      const across = frame.acrossMm(u, v);
      expect(frame.faceVMm(u, across)).toBeCloseTo(v, 3);
      // Over 3 mm each way the across-fibre place stays put along the true fibre.
      const slope = fibreSlopeAt(board, plane, u, v);
      const rise = frame.faceVMm(u + 3, across) - frame.faceVMm(u - 3, across);
      expect(Math.abs(rise / 6 - slope)).toBeLessThan(0.004);
    }
  });

  it('is the same whichever part of the board is drawn', () => {
    const board = createBoard({ seed: 4, setting: 'ring-porous', cut: 'flatsawn' });
    const plane = wideFace(board, 'A');
    const whole = fibreFrame(board, plane, faceLattice(board, plane, 0, 0, 600, 200));
    const part = fibreFrame(board, plane, faceLattice(board, plane, 420, 90, 560, 150));
    for (const [u, v] of [
      [425, 95],
      [500, 120],
      [555, 145],
    ] as const) {
      expect(part.acrossMm(u, v)).toBeCloseTo(whole.acrossMm(u, v), 4);
    }
  });

  it('runs with the ring lines on a quartered face without spiral', () => {
    const board = createBoard(
      bareBoard({ pithYMm: -150, pithDepthMm: 0, spiralDeg: 0, slopeInFaceDeg: 2 }),
    );
    const plane = wideFace(board, 'A');
    const line = ringLineAt(board, plane, 100, 80).angleRad;
    expect(Math.atan(fibreSlopeAt(board, plane, 100, 80))).toBeCloseTo(line, 9);
  });
});

// trade.md 5.1 [D]: rings R_n(z) = R_n - tau z, face plane at distance d from the pith.
describe('a bare cone on a flatsawn face', () => {
  const d = 50;
  const tau = 0.008;
  const w = 2;
  const board = createBoard(bareBoard());
  const face = wideFace(board, 'A');
  const middle = 300; // the pith's reference station is the board's middle

  it('has apexes w / tau apart, at (R_n - d) / tau', () => {
    const { innerMm } = board.field.rings;
    const apexes = Array.from(innerMm)
      .map((radius) => middle + (radius - d) / tau)
      .filter((x) => x > -600 && x < 1200);
    expect(apexes.length).toBeGreaterThan(5);
    apexes.forEach((x, n) => {
      const line = ringLineAt(board, face, x, 100);
      const nearest = Math.min(...Array.from(innerMm, (r) => Math.abs(r - line.ageMm)));
      expect(nearest).toBeLessThan(1e-6);
      if (n > 0) expect(x - apexes[n - 1]!).toBeCloseTo(w / tau, 6);
    });
  });

  it('has lines at tan(alpha) = tau / sin(phi), w / sin(phi) apart but for the taper', () => {
    for (const aside of [-95, -40, -8, 15, 60, 98]) {
      const line = ringLineAt(board, face, 420, 100 + aside);
      const sinPhi = aside / Math.hypot(aside, d);
      expect(Math.tan(line.angleRad)).toBeCloseTo(-tau / sinPhi, 9);
      expect(line.spacingMm).toBeCloseTo(w / Math.hypot(sinPhi, tau), 6);
      expect(Math.abs(line.spacingMm * sinPhi) / w).toBeCloseTo(1, 2);
    }
  });

  it('gives w / cos(phi) on the edge and straight lines when cylinder and face are parallel', () => {
    const edge = { originMm: [0, 160, 0], right: [1, 0, 0], down: [0, 0, 1] } as const;
    const cosPhi = d / Math.hypot(60, d);
    const cylinder = createBoard(bareBoard({ taperMmPerM: 0 }));
    expect(ringLineAt(cylinder, edge, 100, 0).spacingMm).toBeCloseTo(w / cosPhi, 6);
    expect(ringLineAt(cylinder, wideFace(cylinder, 'A'), 100, 30).angleRad).toBeCloseTo(0, 12);
  });

  it('moves a line by t / tan(phi) when t is planed off (method section 6)', () => {
    const t = 0.2;
    for (const aside of [30, 60, 90]) {
      const tanPhi = aside / d;
      const before = ringLineAt(board, face, 300, 100 + aside).ageMm;
      const after = ringLineAt(board, wideFace(board, 'A', t), 300, 100 + aside + t / tanPhi).ageMm;
      expect(Math.abs(after - before)).toBeLessThan(0.002);
    }
  });

  it('shows on face B what lies at that depth, turned over', () => {
    const b = ringLineAt(board, wideFace(board, 'B'), 200, 70);
    const same = ringLineAt(board, wideFace(board, 'A', board.thicknessMm), 200, 130);
    expect(b.ageMm).toBeCloseTo(same.ageMm, 9);
    expect(b.angleRad).toBeCloseTo(-same.angleRad, 9);
  });
});

describe('growRings', () => {
  // The walk is log-normal about its median; range of the generator: trade.md, ring widths.
  it('keeps the median and the range, with runs of good and bad years', () => {
    const widths: number[] = [];
    const pairs: [number, number][] = [];
    for (let seed = 0; seed < 40; seed++) {
      const { innerMm } = growRings(seed, 1.6, 0.33);
      const own = Array.from(innerMm.subarray(1), (r, n) => r - innerMm[n]!);
      widths.push(...own);
      own.slice(1).forEach((w, n) => {
        pairs.push([Math.log(own[n]!), Math.log(w)]);
      });
    }
    widths.sort((a, b) => a - b);
    expect(Math.abs(widths[widths.length >> 1]! - 1.6)).toBeLessThan(0.06);
    expect(widths[0]).toBeGreaterThanOrEqual(0.4 - 1e-9);
    expect(widths[widths.length - 1]).toBeLessThanOrEqual(6 + 1e-9);
    const mean = pairs.reduce((s, [a]) => s + a, 0) / pairs.length;
    const cov = pairs.reduce((s, [a, b]) => s + (a - mean) * (b - mean), 0);
    const variance = pairs.reduce((s, [a]) => s + (a - mean) ** 2, 0);
    expect(Math.abs(cov / variance - 0.75)).toBeLessThan(0.05);
  });
});

describe('the cut', () => {
  it.each([
    ['flatsawn', 0, 30],
    ['rift', 30, 60],
    ['quartered', 60, 90],
  ] as const)('%s has its ring angle in the middle (AWS classes, trade.md)', (cut, low, high) => {
    for (let seed = 1; seed <= 20; seed++) {
      const board = createBoard({ seed, setting: 'ring-porous', cut, waviness: 0 });
      const at = sample();
      board.field.sample(300, 100, 0, at);
      const angle = (Math.acos(Math.abs(at.dz) / Math.hypot(at.dx, at.dy, at.dz)) * 180) / Math.PI;
      expect(angle).toBeGreaterThanOrEqual(low);
      expect(angle).toBeLessThanOrEqual(high);
    }
  });
});
