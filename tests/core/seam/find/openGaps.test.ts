import { describe, expect, it } from 'vitest';
import { createPlane } from '../../../../src/core/image/plane.js';
import { openGaps } from '../../../../src/core/seam/find/openGaps.js';

const pxPerMm = 3;

/** Lined wood, 240 x 60 mm, with a black streak of widthMm along yAt, from x0 to x1 mm. */
function streaked(yAt: (xMm: number) => number, widthMm = 1.5, x0 = 60, x1 = 180) {
  const plane = createPlane(240 * pxPerMm, 60 * pxPerMm);
  for (let y = 0; y < plane.height; y++) {
    for (let x = 0; x < plane.width; x++) {
      const [xMm, yMm] = [(x + 0.5) / pxPerMm, (y + 0.5) / pxPerMm];
      const black = xMm > x0 && xMm < x1 && Math.abs(yMm - yAt(xMm)) < widthMm / 2;
      plane.data[y * plane.width + x] = black ? -2.5 : 0.1 * Math.sin(2.5 * yMm - 0.1 * xMm);
    }
  }
  return openGaps(plane, pxPerMm);
}

describe('openGaps', () => {
  it.each([
    [0, 1.5],
    [0.03, 1.5],
    [-0.03, 1.5],
    [0, 0.7],
    [0, 3.7],
  ])('finds a straight black line of slope %d, %d mm wide', (slope, widthMm) => {
    const [gap, ...more] = streaked((x) => 30 + slope * (x - 120), widthMm);
    expect(more).toEqual([]);
    // Cells are 3 mm long.
    expect(Math.abs(gap!.x1Mm - 60)).toBeLessThanOrEqual(3);
    expect(Math.abs(gap!.x2Mm - 180)).toBeLessThanOrEqual(3);
    expect(Math.abs((gap!.y1Mm + gap!.y2Mm) / 2 - 30)).toBeLessThan(0.5);
  });

  it('finds none in wood, none in a spot, none in a dark ground', () => {
    expect(streaked(() => 30, 0)).toEqual([]);
    expect(streaked(() => 30, 2, 100, 112)).toEqual([]);
    expect(streaked(() => 30, 20)).toEqual([]);
  });

  it('takes none that runs aslant for a saw’s', () => {
    expect(streaked((x) => 30 + 0.08 * (x - 120))).toEqual([]);
  });

  it('nor one that winds, as a crack or a streak of resin does', () => {
    expect(streaked((x) => 30 + 0.8 * Math.sin(x / 12))).toEqual([]);
  });
});
