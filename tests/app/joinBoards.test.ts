import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinBoards } from '../../src/app/analysis/joinBoards.js';
import { mergeRescore, rescoreOptions } from '../../src/app/analysis/rescore.js';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import type { ScoreResult } from '../../src/core/results/scoreResult.js';

/** A board whose pixel (x, y) holds x, y and the board's own number. */
function board(number: number, width: number, height: number) {
  const data = new Uint8ClampedArray(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data.set([x, y, number], 3 * (y * width + x));
  }
  const image = { width, height, data };
  return { image, pxPerMm: 2, widthMm: width / 2, heightMm: height / 2, notes: [] };
}

describe('boards laid edge to edge', () => {
  it('keep every pixel that jointing leaves, turned boards upside down, and meet at the joint', () => {
    const side = fc.integer({ min: 12, max: 40 });
    fc.assert(
      fc.property(
        side,
        side,
        side,
        fc.boolean(),
        fc.boolean(),
        fc.nat(4),
        (w, h1, h2, t1, t2, taken) => {
          const upper = { panel: board(1, w, h1), turned: t1 };
          const lower = { panel: board(2, w, h2), turned: t2 };
          const { panel, jointYMm } = joinBoards(upper, lower, taken / 2);
          expect(jointYMm).toBe((h1 - taken) / 2);
          expect(panel.image.height).toBe(h1 + h2 - 2 * taken);
          const at = (x: number, y: number) => [
            ...panel.image.data.subarray(3 * (y * w + x), 3 * (y * w + x) + 3),
          ];
          const shown = (turned: boolean, x: number, y: number, height: number, number: number) =>
            turned ? [w - 1 - x, height - 1 - y, number] : [x, y, number];
          for (const x of [0, w - 1]) {
            expect(at(x, 0)).toEqual(shown(t1, x, 0, h1, 1));
            expect(at(x, h1 - taken - 1)).toEqual(shown(t1, x, h1 - taken - 1, h1, 1));
            expect(at(x, h1 - taken)).toEqual(shown(t2, x, taken, h2, 2));
            expect(at(x, panel.image.height - 1)).toEqual(shown(t2, x, h2 - 1, h2, 2));
          }
        },
      ),
    );
  });
});

describe('another viewing distance', () => {
  it('measures the known joints and keeps what finding had told', () => {
    const line = { x1Mm: 0, y1Mm: 10, x2Mm: 50, y2Mm: 10 };
    const seam = { id: 'joint 1', found: 'photo', p: 0.002, line, v: 1 };
    const again = { ...seam, found: 'placed', p: null, v: 2 };
    const known = { seams: [seam], notes: ['kept'] } as unknown as ScoreResult;
    const measured = { seams: [again], notes: [] } as unknown as ScoreResult;
    expect(rescoreOptions(defaultScoreOptions, known)).toMatchObject({
      find: false,
      placedSeams: [line],
    });
    expect(mergeRescore(known, measured)).toEqual({ seams: [{ ...seam, v: 2 }], notes: ['kept'] });
  });
});
