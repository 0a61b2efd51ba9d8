import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../src/core/errors.js';
import { checkPlacedSeams } from '../../../src/core/pipeline/checkPlacedSeams.js';
import type { LineMm } from '../../../src/core/results/scoreResult.js';

const photo = {
  image: { width: 3, height: 2, data: new Uint8Array(18) },
  pxPerMm: 0.01,
  widthMm: 300,
  heightMm: 200,
  notes: [],
};
const line = (x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number): LineMm => ({
  x1Mm,
  y1Mm,
  x2Mm,
  y2Mm,
});

describe('checkPlacedSeams', () => {
  it.each([
    ['along', line(0, 100, 300, 100)],
    ['across', line(150, 0, 150, 200)],
    ['from another joint to the edge', line(100, 60, 300, 62)],
  ])('takes a joint %s', (_, seam) => {
    expect(() => checkPlacedSeams([seam], photo)).not.toThrow();
  });

  it.each([
    ['outside the panel', line(0, 260, 300, 260)],
    ['half outside', line(-50, 100, 300, 100)],
    ['of no length', line(90, 90, 90, 90)],
    ['along the upper edge', line(0, 1, 300, 1)],
    ['along the lower edge', line(0, 199, 300, 199)],
    ['along the left edge', line(0.5, 0, 0.5, 200)],
    ['on the right edge itself', line(300, 0, 300, 200)],
    ['of no number', line(0, Number.NaN, 300, Number.NaN)],
  ])('refuses a joint %s, and says what to do', (_, seam) => {
    let thrown: unknown;
    try {
      checkPlacedSeams([line(0, 100, 300, 100), seam], photo);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(SeamgrainError);
    expect(thrown).toMatchObject({ code: 'badPanel' });
    expect((thrown as SeamgrainError).hint).not.toBe('');
  });
});
