import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearRgbToLab } from '../../../src/core/colour/linearRgbToLab.js';
import { createBoard } from '../../../src/core/wood/createBoard.js';
import { driftOnLattice } from '../../../src/core/wood/driftOnLattice.js';
import { faceLattice } from '../../../src/core/wood/faceLattice.js';
import { wideFace } from '../../../src/core/wood/facePlane.js';
import { fibreFrame } from '../../../src/core/wood/fibreFrame.js';
import { growRings } from '../../../src/core/wood/growRings.js';
import { labToLinearRgb } from '../../../src/core/wood/labToLinearRgb.js';
import { latticeRow } from '../../../src/core/wood/latticeRow.js';
import { meanDirectionRad } from '../../../src/core/wood/meanDirectionRad.js';
import type { PaintJob } from '../../../src/core/wood/paintJob.js';
import { meanRingDensity, ringProfile } from '../../../src/core/wood/ringProfile.js';
import { scatterOnFace } from '../../../src/core/wood/scatterOnFace.js';
import { splatDash } from '../../../src/core/wood/splatDash.js';

const unit = fc.double({ min: 0, max: 1, noNaN: true });

describe('labToLinearRgb', () => {
  it('undoes linearRgbToLab', () => {
    fc.assert(
      fc.property(unit, unit, unit, (r, g, b) => {
        const back = labToLinearRgb(linearRgbToLab(r, g, b));
        [r, g, b].forEach((value, i) => {
          expect(back[i]).toBeCloseTo(value, 9);
        });
      }),
    );
  });
});

describe('ring density', () => {
  const settings = ['ring-porous', 'diffuse-porous', 'softwood'] as const;
  it.each(settings)('averages exactly: two halves make the whole (%s)', (setting) => {
    const profile = ringProfile(growRings(1, 1.5, 0.3), setting, 2);
    fc.assert(
      fc.property(unit, unit, (a, b) => {
        const at = 20 + 200 * a;
        const span = 0.1 + 3 * b;
        const whole = meanRingDensity(profile, at, span);
        const inner = meanRingDensity(profile, at - span / 4, span / 2);
        const outer = meanRingDensity(profile, at + span / 4, span / 2);
        expect((inner + outer) / 2).toBeCloseTo(whole, 6);
        expect(whole).toBeGreaterThanOrEqual(0);
        expect(whole).toBeLessThan(1.7);
      }),
    );
  });

  it('has the sharp edge where the year begins: ring-porous darkens, softwood pales', () => {
    const rings = growRings(1, 2, 0.2);
    const step = (setting: (typeof settings)[number]) => {
      const profile = ringProfile(rings, setting, 2);
      let change = 0;
      for (let n = 40; n < 90; n++) {
        const border = rings.innerMm[n]!;
        change += meanRingDensity(profile, border + 0.12, 0.04);
        change -= meanRingDensity(profile, border - 0.12, 0.04);
      }
      return change / 50;
    };
    expect(step('ring-porous')).toBeGreaterThan(0.3);
    expect(step('softwood')).toBeLessThan(-0.4);
    expect(step('diffuse-porous')).toBeLessThan(-0.3);
  });
});

describe('latticeRow', () => {
  it('reads square pieces by rows as it reads any other piece point by point', () => {
    const board = createBoard({ seed: 2, setting: 'softwood' });
    const plane = wideFace(board, 'A');
    const lattice = faceLattice(board, plane, 90, 40, 160, 80);
    const canvas = {
      left: 0,
      top: 0,
      width: 120,
      height: 60,
      pxPerMm: 2,
      tone: new Float32Array(0),
      pores: new Float32Array(0),
    };
    const job: PaintJob = {
      board,
      plane,
      profile: ringProfile(board.field.rings, 'softwood', 1),
      lattice,
      drift: driftOnLattice(board, plane, lattice),
      frame: fibreFrame(board, plane, lattice),
      canvas,
      faceFromPx: { a: 0.5, b: 0, c: 95, d: 0, e: 0.5, f: 45 },
      textureSeed: 1,
    };
    const square = latticeRow(job);
    const general = latticeRow({ ...job, faceFromPx: { ...job.faceFromPx, b: 1e-13 } });
    for (const row of [0, 17, 59]) {
      const [a, b] = [square(row), general(row)];
      for (const key of ['ageMm', 'slope', 'drift', 'shift'] as const) {
        for (const column of [0, 41, 119]) expect(a[key][column]).toBeCloseTo(b[key][column]!, 4);
      }
    }
  });
});

describe('splatDash', () => {
  it('adds the same amount wherever it falls between the pixels', () => {
    fc.assert(
      fc.property(unit, unit, fc.boolean(), (dx, dy, upright) => {
        const ends = upright
          ? [20 + dx, 8 + dy, 20 + dx, 30 + dy]
          : [8 + dx, 20 + dy, 30 + dx, 20 + dy];
        const [x0, y0, x1, y1] = ends as [number, number, number, number];
        const plane = new Float32Array(40 * 40);
        splatDash(plane, 40, 40, x0, y0, x1, y1, 0.4, 1);
        const total = plane.reduce((sum, v) => sum + v, 0);
        // 22 px long, 0.4 px wide, spindle of mean width 0.35 + 0.65 * (1 - 1/5).
        expect(total / (22 * 0.4 * 0.87)).toBeCloseTo(1, 1);
      }),
    );
  });
});

describe('scatterOnFace', () => {
  it('gives overlapping parts the same points, about as many as asked', () => {
    const points = (x0: number, x1: number) => {
      const found: string[] = [];
      scatterOnFace({ x0, x1, y0: 0, y1: 59.9 }, 0.5, 8, 4, 3, (a, b, random) => {
        if (a >= 80 && a < 120) found.push(`${a} ${b} ${random()}`);
      });
      return found.sort();
    };
    expect(points(40, 200)).toEqual(points(79, 125));
    expect(Math.abs(points(0, 200).length / (40 * 60) - 0.5)).toBeLessThan(0.05);
  });
});

describe('meanDirectionRad', () => {
  it('averages lines, not arrows: 85 and -85 deg make 90, not 0', () => {
    const deg = Math.PI / 180;
    const field = (x: number) => (x > 0 ? 85 : -85) * deg;
    const mean = meanDirectionRad((x) => (x === 0 ? Number.NaN : field(x)), 0, 0, 3);
    expect(Math.abs(mean)).toBeCloseTo(Math.PI / 2, 9);
  });
});
