import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPlane } from '../../../src/core/image/plane.js';
import { panelAngleDeg, seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamReach } from '../../../src/core/seam/seamReach.js';
import { seamStrip } from '../../../src/core/seam/seamStrip.js';

const mm = fc.double({ min: 0, max: 800, noNaN: true });
const line = fc
  .record({ x1Mm: mm, y1Mm: mm, x2Mm: mm, y2Mm: mm })
  .filter((l) => Math.hypot(l.x2Mm - l.x1Mm, l.y2Mm - l.y1Mm) > 5);

describe('seamFrame', () => {
  it('has side A above a rip and left of a crosscut, along is right and down', () => {
    const rip = seamFrame({ x1Mm: 300, y1Mm: 50, x2Mm: 0, y2Mm: 50 });
    expect(rip).toMatchObject({ kind: 'rip', originXMm: 0, ex: 1, ny: 1, lengthMm: 300 });
    const cut = seamFrame({ x1Mm: 70, y1Mm: 90, x2Mm: 70, y2Mm: 10 });
    expect(cut).toMatchObject({ kind: 'crosscut', originYMm: 10, ey: 1, nx: 1, lengthMm: 80 });
  });

  it('is square, one long, and the same whichever end comes first', () => {
    fc.assert(
      fc.property(line, (l) => {
        const f = seamFrame(l);
        expect(Math.hypot(f.ex, f.ey)).toBeCloseTo(1, 12);
        expect(Math.hypot(f.nx, f.ny)).toBeCloseTo(1, 12);
        expect(f.ex * f.nx + f.ey * f.ny).toBeCloseTo(0, 12);
        expect(f.kind === 'rip' ? f.ny : f.nx).toBeGreaterThan(0);
        expect(seamFrame({ x1Mm: l.x2Mm, y1Mm: l.y2Mm, x2Mm: l.x1Mm, y2Mm: l.y1Mm })).toEqual(f);
      }),
    );
  });

  it('of the transposed line is the other kind with x and y exchanged', () => {
    fc.assert(
      fc.property(
        line.filter((l) => Math.abs(l.x2Mm - l.x1Mm) !== Math.abs(l.y2Mm - l.y1Mm)),
        (l) => {
          const f = seamFrame(l);
          const t = seamFrame({ x1Mm: l.y1Mm, y1Mm: l.x1Mm, x2Mm: l.y2Mm, y2Mm: l.x2Mm });
          expect(t.kind).not.toBe(f.kind);
          const turned = [t.ey, t.ex, t.ny, t.nx, t.originYMm, t.originXMm, t.lengthMm];
          [f.ex, f.ey, f.nx, f.ny, f.originXMm, f.originYMm, f.lengthMm].forEach((v, k) => {
            expect(turned[k]).toBeCloseTo(v, 9);
          });
        },
      ),
    );
  });

  it('gives angles of the panel within (-90, 90]', () => {
    const rip = seamFrame({ x1Mm: 0, y1Mm: 5, x2Mm: 100, y2Mm: 5 });
    const cut = seamFrame({ x1Mm: 5, y1Mm: 0, x2Mm: 5, y2Mm: 100 });
    expect(panelAngleDeg(rip, 0.3)).toBeCloseTo((0.3 * 180) / Math.PI, 9);
    // Grain 10 deg off a crosscut's own direction (down) runs 80 deg off the panel's length.
    expect(panelAngleDeg(cut, Math.PI / 18)).toBeCloseTo(80, 9);
    expect(panelAngleDeg(cut, 0)).toBeCloseTo(90, 9);
    fc.assert(
      fc.property(line, fc.double({ min: -7, max: 7, noNaN: true }), (l, angle) => {
        const deg = panelAngleDeg(seamFrame(l), angle);
        expect(deg).toBeGreaterThan(-90);
        expect(deg).toBeLessThanOrEqual(90);
      }),
    );
  });
});

describe('seamStrip', () => {
  const pxPerMm = 4;
  const panel = createPlane(400, 240);
  for (let i = 0; i < panel.data.length; i++) {
    panel.data[i] = ((i % 400) + 0.5) / pxPerMm + 1000 * ((Math.floor(i / 400) + 0.5) / pxPerMm);
  }

  it.each([
    ['rip', { x1Mm: 10, y1Mm: 30, x2Mm: 90, y2Mm: 31 }],
    ['crosscut', { x1Mm: 50, y1Mm: 8, x2Mm: 49, y2Mm: 52 }],
  ] as const)('along a tilted %s shows the wood that the frame says', (_, l) => {
    const frame = seamFrame(l);
    const strip = seamStrip(panel, pxPerMm, frame, pxPerMm, 6, 7);
    expect([strip.reachAMm, strip.reachBMm]).toEqual([6, 7]);
    expect(strip.plane.height).toBe(52);
    for (const [i, j] of [
      [0, 0],
      [100, 3],
      [120, 40],
      [strip.plane.width - 1, 51],
    ] as const) {
      const [xi, eta] = [(i + 0.5) / pxPerMm, (j + 0.5) / pxPerMm - 6];
      const x = frame.originXMm + xi * frame.ex + eta * frame.nx;
      const y = frame.originYMm + xi * frame.ey + eta * frame.ny;
      expect(strip.plane.data[j * strip.plane.width + i]).toBeCloseTo(x + 1000 * y, 1);
    }
  });
});

describe('seamReach', () => {
  const rip = seamFrame({ x1Mm: 0, y1Mm: 60, x2Mm: 300, y2Mm: 60 });

  it("ends at the panel's edges", () => {
    const reach = seamReach(rip, [], 300, 200);
    expect(reach.aMm).toBeCloseTo(60, 9);
    expect(reach.bMm).toBeCloseTo(140, 9);
  });

  it('ends at a joint running the same way, not at one that crosses or meets it', () => {
    const parallel = { x1Mm: 0, y1Mm: 100, x2Mm: 300, y2Mm: 100 };
    const crossing = { x1Mm: 150, y1Mm: 0, x2Mm: 150, y2Mm: 200 };
    expect(seamReach(rip, [parallel, crossing], 300, 200).bMm).toBeCloseTo(40, 9);
    expect(seamReach(rip, [crossing], 300, 200).bMm).toBeCloseTo(140, 9);
  });

  it('does not see a short joint that lies beyond its own ends', () => {
    const short = seamFrame({ x1Mm: 0, y1Mm: 60, x2Mm: 100, y2Mm: 60 });
    const beside = { x1Mm: 200, y1Mm: 80, x2Mm: 300, y2Mm: 80 };
    expect(seamReach(short, [beside], 300, 200).bMm).toBeCloseTo(140, 9);
  });
});
