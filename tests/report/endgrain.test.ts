import { describe, expect, it } from 'vitest';
import type { EndgrainResult } from '../../src/core/results/endgrainResult.js';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { describeEndgrain } from '../../src/report/endgrain/describeEndgrain.js';
import { endgrainPicture } from '../../src/report/endgrain/endgrainPicture.js';
import { roughText } from '../../src/report/endgrain/roughText.js';

const result: EndgrainResult = {
  schema: 'seamgrain/endgrain@1',
  panel: { widthMm: 100, heightMm: 25, pxPerMm: 7 },
  pith: { xMm: 50, yMm: 65, seMm: 3 },
  pithAtLeastMm: null,
  found: 'photo',
  ringAngle: Array.from({ length: 20 }, (_, k) => {
    const xMm = 5 * k + 2.5;
    const leanDeg = (Math.atan2(xMm - 50, 52.5) * 180) / Math.PI;
    return { xMm, angleDeg: Math.abs(leanDeg), seDeg: 1, leanDeg };
  }),
  ringWidthMm: { median: 2, p10: 1, p90: 3 },
  cut: { flatsawn: 0.6, rift: 0.4, quartered: 0 },
  cupping: { hollow: 'top', faceDifference: 0.3, hollowMm: 0.8 },
  sawMarks: false,
  notes: ['A note.'],
};
const outside = [
  { xMm: 50, yMm: 65 },
  { xMm: 50, yMm: -65 },
  { xMm: -80, yMm: 10 },
  { xMm: 190, yMm: 10 },
  { xMm: 30, yMm: 12 },
];

describe('the picture of an end', () => {
  for (const widthPx of [360, 720, 1160]) {
    it(`keeps its words apart and on the page at ${widthPx} px, wherever the pith lies`, () => {
      for (const place of outside) {
        const shown = { ...result, pith: { ...place, seMm: 3 } };
        const picture = endgrainPicture(shown, { units: 'in', widthPx });
        for (const [i, a] of picture.labels.entries()) {
          expect(a.x, a.text).toBeGreaterThanOrEqual(0);
          expect(a.x + a.width, a.text).toBeLessThanOrEqual(picture.widthPx + 1);
          expect(a.y + a.height, a.text).toBeLessThanOrEqual(picture.heightPx + 1);
          for (const b of picture.labels.slice(i + 1)) {
            expect(boxesOverlap(a, b), `${a.text} | ${b.text}`).toBe(false);
          }
        }
      }
    });
  }

  it('draws an end that could not be read without rings', () => {
    const unread = { ...result, pith: null, ringAngle: [], cut: null, cupping: null };
    expect(endgrainPicture(unread, { units: 'mm' }).svg).toContain('Cannot tell');
  });
});

describe('the words of an end', () => {
  it('name the shares, the pith with its error and the hollow face', () => {
    const { headline, lines } = describeEndgrain(result, { units: 'mm' });
    expect(headline).toBe('Of the width, 60 % flatsawn and 40 % rift.');
    expect(lines.join(' ')).toContain(
      'lay outside the board, about 53 mm from the middle of this end, give or take 3 mm: 50 mm from the left and 40 mm below the bottom face',
    );
    expect(lines.join(' ')).toContain('the top face, away from the heart, goes hollow');
  });
});

describe('a length with an error', () => {
  it('is written no finer than the error deserves', () => {
    expect(roughText(123, 2, { units: 'mm' })).toBe('123 mm');
    expect(roughText(123, 7, { units: 'mm' })).toBe('125 mm');
    expect(roughText(123, 30, { units: 'mm' })).toBe('120 mm');
    expect(roughText(3, 30, { units: 'mm' })).toBe('10 mm');
    // 4.84 in: to a sixteenth, a quarter, a half.
    expect(roughText(123, 2, { units: 'in' })).toBe('4 13/16 in');
    expect(roughText(123, 7, { units: 'in' })).toBe('4 3/4 in');
    expect(roughText(123, 30, { units: 'in' })).toBe('5 in');
  });
});
