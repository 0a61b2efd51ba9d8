import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pinch } from '../../src/app/geometry/pinch.js';
import { clampView, fitView, toPanelMm, zoomAt } from '../../src/app/geometry/viewTransform.js';

const length = fc.double({ min: 20, max: 3000, noNaN: true });
const extent = fc.record({ width: length, height: length });
const zoom = fc.double({ min: 0.2, max: 5, noNaN: true });

describe('the view of the panel', () => {
  it('shows the whole panel when fitted, centred', () => {
    fc.assert(
      fc.property(extent, extent, (panel, screen) => {
        const view = fitView(panel, screen);
        const right = view.x + panel.width * view.pxPerMm;
        const bottom = view.y + panel.height * view.pxPerMm;
        expect(view.x).toBeGreaterThan(-1e-6);
        expect(view.y).toBeGreaterThan(-1e-6);
        expect(screen.width - right).toBeCloseTo(view.x, 6);
        expect(screen.height - bottom).toBeCloseTo(view.y, 6);
      }),
    );
  });

  it('keeps the place under the pointer where it is when zooming', () => {
    fc.assert(
      fc.property(extent, extent, zoom, length, length, (panel, screen, factor, x, y) => {
        const view = fitView(panel, screen);
        const before = toPanelMm(view, x, y);
        const after = toPanelMm(zoomAt(view, factor, x, y), x, y);
        expect(after.xMm).toBeCloseTo(before.xMm, 6);
        expect(after.yMm).toBeCloseTo(before.yMm, 6);
      }),
    );
  });

  it('keeps what is under each finger under it when pinching along a line', () => {
    const view = { pxPerMm: 2, x: 10, y: 20 };
    const before = [
      { x: 100, y: 100 },
      { x: 200, y: 150 },
    ] as const;
    const after = [
      { x: 60, y: 90 },
      { x: 260, y: 190 },
    ] as const;
    const pinched = pinch(view, before, after);
    for (const finger of [0, 1] as const) {
      const was = toPanelMm(view, before[finger].x, before[finger].y);
      const is = toPanelMm(pinched, after[finger].x, after[finger].y);
      expect(is.xMm).toBeCloseTo(was.xMm, 9);
      expect(is.yMm).toBeCloseTo(was.yMm, 9);
    }
  });

  it('never loses the panel from the screen and never zooms out beyond the whole', () => {
    fc.assert(
      fc.property(extent, extent, zoom, length, length, (panel, screen, factor, dx, dy) => {
        const moved = zoomAt(fitView(panel, screen), factor, dx, dy);
        const kept = clampView({ ...moved, x: moved.x - dx * 3, y: moved.y + dy }, panel, screen);
        expect(kept.pxPerMm).toBeGreaterThanOrEqual(fitView(panel, screen).pxPerMm - 1e-9);
        expect(kept.x).toBeLessThan(screen.width);
        expect(kept.x + panel.width * kept.pxPerMm).toBeGreaterThan(0);
        expect(kept.y).toBeLessThan(screen.height);
        expect(kept.y + panel.height * kept.pxPerMm).toBeGreaterThan(0);
      }),
    );
  });
});
