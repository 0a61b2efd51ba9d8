import { beforeAll, describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../src/core/errors.js';
import { type ForecastLines, forecastLines } from '../../../src/core/rip/forecastLines.js';
import { endSlides } from '../../../src/core/rip/frontCut.js';
import { type PlacementWish, placementBox } from '../../../src/core/rip/placementBox.js';
import { placementCost } from '../../../src/core/rip/placementCost.js';
import { searchPlacements } from '../../../src/core/rip/searchPlacements.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../../src/core/wood/onePiecePanel.js';

const panel = { widthMm: 170, heightMm: 110 };
const loss = { kerfMm: 3.175, dressMm: 0 };
const wish: PlacementWish = { widthMm: 80, heightMm: 45, loss, marginMm: 14, within: null };
let lines: ForecastLines;

beforeAll(() => {
  const board = {
    seed: 21,
    setting: 'softwood',
    cut: 'flatsawn',
    lengthMm: 170,
    widthMm: 110,
  } as const;
  const { image } = drawPanel(onePiecePanel({ board, ...panel }), { pxPerMm: 5 });
  const photo = { image, pxPerMm: 5, ...panel, notes: [] };
  lines = forecastLines(panelPlanes(photo), photo, 600);
});

describe('the search for a front', () => {
  it('finds the cheapest of all places, each read as a score reads it', () => {
    const search = searchPlacements(lines, wish, 'stay', false, 3);
    const box = placementBox(panel, wish);
    const stay = endSlides('stay', loss.kerfMm);
    let least = Number.POSITIVE_INFINITY;
    for (let y = Math.ceil(box.y1Mm / 2) * 2; y <= box.y2Mm; y += 2) {
      for (let x = Math.ceil(box.x1Mm / 2) * 2; x <= box.x2Mm; x += 2) {
        const front = { xMm: x, yMm: y, widthMm: 80, heightMm: 45 };
        least = Math.min(least, placementCost(lines.asScored, front, loss, stay).cost);
      }
    }
    expect(search.best[0]?.cost).toBe(least);
    expect(search.medianCost).toBeGreaterThan(least);
  });

  it('keeps kerf and margin about every place, and reports places that differ', () => {
    const { best } = searchPlacements(lines, wish, 'stay', false, 4);
    for (const { front } of best) {
      expect(front.xMm - loss.kerfMm).toBeGreaterThanOrEqual(14);
      expect(front.xMm + 80 + loss.kerfMm).toBeLessThanOrEqual(170 - 14);
      expect(front.yMm - loss.kerfMm).toBeGreaterThanOrEqual(14);
      expect(front.yMm + 45 + loss.kerfMm).toBeLessThanOrEqual(110 - 14);
    }
    const apart = best.flatMap(({ front: a }, i) =>
      best
        .slice(i + 1)
        .map(({ front: b }) =>
          Math.max(Math.abs(a.xMm - b.xMm) / 40, Math.abs(a.yMm - b.yMm) / 10),
        ),
    );
    for (const far of apart) expect(far).toBeGreaterThan(0.7);
  });

  it('orders by cost', () => {
    const costs = searchPlacements(lines, wish, 'stay', false, 6).best.map(({ cost }) => cost);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });

  it('with the panel either way up also tries the box at the opposite corner', () => {
    const within = { x1Mm: 20, y1Mm: 18, x2Mm: 106, y2Mm: 68 };
    const { best } = searchPlacements(lines, { ...wish, within }, 'stay', true, 20);
    const turned = best.filter((place) => place.turned);
    expect(turned.length).toBeGreaterThan(0);
    for (const { front, turned: isTurned } of best) {
      // After turning by 180 degrees the front lies at (W - x - w, H - y - h).
      const [x, y] = isTurned
        ? [170 - front.xMm - 80, 110 - front.yMm - 45]
        : [front.xMm, front.yMm];
      expect(x).toBeGreaterThanOrEqual(20);
      expect(x + 80).toBeLessThanOrEqual(106);
      expect(y).toBeGreaterThanOrEqual(18);
      expect(y + 45).toBeLessThanOrEqual(68);
    }
  });

  it('says by how much a front does not fit', () => {
    const refuse = () => placementBox(panel, { ...wish, heightMm: 90 });
    // 110 - 90 - 2 x (14 + 3.175) = -14.35.
    expect(refuse).toThrow(SeamgrainError);
    expect(refuse).toThrow(/14\.[34] mm\) of width/);
  });
});

describe('a placement', () => {
  const front = { xMm: 40, yMm: 32, widthMm: 80, heightMm: 45 };

  it('costs the sum of V^3 of its segments, the worst among them', () => {
    const { cost, segments, worst } = placementCost(lines, front, loss, endSlides('close', 3.175));
    expect(segments).toHaveLength(8);
    expect(cost).toBeCloseTo(
      segments.reduce((s, { v }) => s + (v ?? 0) ** 3, 0),
      12,
    );
    expect(worst.v).toBe(Math.max(...segments.map(({ v }) => v ?? 0)));
  });

  it('breaks no line at ends that stay', () => {
    const { segments } = placementCost(lines, front, loss, endSlides('stay', 3.175));
    const ends = segments.filter(({ segment }) => segment.kind === 'crosscut');
    expect(ends.map(({ v }) => v)).toEqual([0, 0]);
  });
});
