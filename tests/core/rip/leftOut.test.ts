import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { pointInPolygon } from '../../../src/core/geometry/pointInPolygon.js';
import { defaultForecastOptions } from '../../../src/core/pipeline/forecastOptions.js';
import { forecastPanel } from '../../../src/core/pipeline/forecastPanel.js';
import { curveSummary } from '../../../src/core/rip/curveSummary.js';
import {
  type ForecastLines,
  forecastLines,
  type Outline,
} from '../../../src/core/rip/forecastLines.js';
import { outlineTouchesBox } from '../../../src/core/rip/outlineTouchesBox.js';
import { ripCurve } from '../../../src/core/rip/ripCurve.js';
import { searchPlacements } from '../../../src/core/rip/searchPlacements.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
import type { PanelPlanes } from '../../../src/core/seam/seamWood.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../../src/core/wood/onePiecePanel.js';

const panel = { widthMm: 120, heightMm: 80 };
const kerfMm = 3.175;
const loss = { kerfMm, dressMm: 0 };
const wish = { widthMm: 45, heightMm: 18, loss, marginMm: 6, within: null };
let planes: PanelPlanes;
let read: ForecastLines;
let photo: Parameters<typeof forecastPanel>[0];

beforeAll(() => {
  const board = { seed: 5, setting: 'softwood', cut: 'flatsawn', lengthMm: 120, widthMm: 80 };
  const spec = onePiecePanel({ board: board as never, ...panel });
  photo = { image: drawPanel(spec, { pxPerMm: 4 }).image, pxPerMm: 4, ...panel, notes: [] };
  planes = panelPlanes(photo);
  read = forecastLines(planes, panel, 600);
});

const knotAt = (x: number, y: number, radius: number): Outline =>
  Array.from({ length: 12 }, (_, k) => [
    x + radius * Math.cos((k * Math.PI) / 6),
    y + radius * Math.sin((k * Math.PI) / 6),
  ]);

/** Points of a rectangle, a millimetre or less apart: a second way to ask what lies in it. */
function pointsOf(x1: number, y1: number, x2: number, y2: number): [number, number][] {
  const along = (from: number, to: number) =>
    Array.from({ length: Math.ceil(to - from) + 1 }, (_, i) => Math.min(to, from + i));
  return along(x1, x2).flatMap((x) => along(y1, y2).map((y): [number, number] => [x, y]));
}

describe('a region against a rectangle', () => {
  const corner = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }));
  const box = { x1Mm: 12.5, y1Mm: 10.5, x2Mm: 25.5, y2Mm: 17.5 };

  it('touches it wherever a point of one lies in the other', () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 7 }), (outline) => {
        const inside = pointsOf(12.5, 10.5, 25.5, 17.5).some(([x, y]) =>
          pointInPolygon(x, y, outline),
        );
        if (inside) expect(outlineTouchesBox(outline, box)).toBe(true);
      }),
    );
  });

  it('does not touch it when a line keeps them apart', () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 7 }), (outline) => {
        const above = outline.map(([x, y]) => [x, y / 4] as const); // y at most 10
        const right = outline.map(([x, y]) => [26 + x, y] as const);
        expect(outlineTouchesBox(above, box)).toBe(false);
        expect(outlineTouchesBox(right, box)).toBe(false);
      }),
    );
  });
});

describe('a front and a knot that was left out', () => {
  const knot = fc.record({
    x: fc.integer({ min: 0, max: 120 }),
    y: fc.integer({ min: 0, max: 80 }),
    radius: fc.integer({ min: 1, max: 11 }),
  });

  it('keeps face and cuts clear of it wherever any place does, and says where not', () => {
    fc.assert(
      fc.property(knot, ({ x, y, radius }) => {
        const region = knotAt(x, y, radius);
        // What is read does not matter here; every line is read once for all knots.
        const lines = { ...read, leftOut: [region] };
        const { best, clear, tried } = searchPlacements(lines, wish, 'stay', false, 3);
        expect(clear).toBeLessThanOrEqual(tried);
        best.forEach((place, i) => {
          const { xMm, yMm, widthMm, heightMm } = place.front;
          // The front with its crosscuts, and both rips over the whole length.
          const wood = [
            ...pointsOf(xMm - kerfMm, yMm, xMm + widthMm + kerfMm, yMm + heightMm),
            ...pointsOf(0, yMm - kerfMm, 120, yMm),
            ...pointsOf(0, yMm + heightMm, 120, yMm + heightMm + kerfMm),
          ];
          const isHit = wood.some(([px, py]) => pointInPolygon(px, py, region));
          if (isHit) expect(place.leftOut.length).toBeGreaterThan(0);
          if (i === 0 && clear > 0) expect(place.leftOut).toEqual([]);
        });
      }),
      { numRuns: 4 },
    );
  });

  it('changes nothing where it lies far from all cuts', () => {
    const without = searchPlacements(forecastLines(planes, panel, 600), wish, 'stay', false, 1);
    const { front } = without.best[0]!;
    const y = front.yMm > 40 ? 3 : 77;
    const lines = forecastLines(planes, panel, 600, [knotAt(3, y, 1)]);
    const { best } = searchPlacements(lines, wish, 'stay', false, 1);
    expect(best[0]?.front).toEqual(front);
    expect(best[0]?.leftOut).toEqual([]);
  });

  it('is named where no place is clear of it', () => {
    const everywhere: Outline = [
      [-1, -1],
      [121, -1],
      [121, 81],
      [-1, 81],
    ];
    const options = {
      ...defaultForecastOptions,
      front: wish,
      marginMm: 6,
      places: 1,
      leftOut: [everywhere],
    };
    const { placements, search, notes } = forecastPanel(photo, options);
    expect(search?.clear).toBe(0);
    expect(notes.join(' ')).toMatch(/No place of the front keeps clear/);
    expect(placements[0]?.leftOut).toContain('upper rip');
    expect(placements[0]?.notes.join(' ')).toMatch(/not judged/);
  });
});

describe('a rip and a knot that was left out', () => {
  it('is marked, is not called the best and does not count as one that disappears', () => {
    const region = knotAt(60, 40, 9);
    const curve = ripCurve(forecastLines(planes, panel, 600, [region]), kerfMm);
    for (const { yMm, leftOut } of curve) {
      const through = pointsOf(45, yMm - kerfMm / 2, 75, yMm + kerfMm / 2).some(([x, y]) =>
        pointInPolygon(x, y, region),
      );
      if (through) expect(leftOut).toBe(true);
      if (Math.abs(yMm - 40) > 9 + 3 + kerfMm / 2) expect(leftOut).toBeUndefined();
    }
    const hidden = curve.map((point) => (point.leftOut ? { ...point, v: 0 } : { ...point, v: 1 }));
    const { bestYMm, vBest, disappears } = curveSummary(hidden);
    expect(vBest).toBe(1);
    expect(disappears).toBe(0);
    expect(Math.abs((bestYMm ?? 40) - 40)).toBeGreaterThan(9);
  });

  it('tells nothing of its stretches in it, and the rest as before', () => {
    const region = knotAt(60, 40, 9);
    const options = { ...defaultForecastOptions, ripsMm: [40] };
    const [plain] = forecastPanel(photo, options).rips;
    const [knotted] = forecastPanel(photo, { ...options, leftOut: [region] }).rips;
    expect(knotted?.windows.map(({ atMm }) => atMm)).toEqual(plain?.windows.map((w) => w.atMm));
    for (const { atMm, v } of knotted?.windows ?? []) {
      expect(v === null, `${atMm} mm`).toBe(pointInPolygon(atMm, 40, region));
    }
    expect(knotted?.notes.join(' ')).toMatch(/not judged/);
    expect(plain?.notes.join(' ')).not.toMatch(/not judged/);
  });
});
