import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LineMm, SeamResult } from '../../src/core/results/scoreResult.js';
import { placeSeams } from '../../src/report/words/placeSeams.js';
import { inventedSeam } from '../support/inventedScore.js';

const panel = { widthMm: 500, heightMm: 240, pxPerMm: 5 };
const along = (id: string, y: number, x1Mm: number, x2Mm: number) =>
  inventedSeam(id, { x1Mm, y1Mm: y, x2Mm, y2Mm: y }, () => 1);
const across = (id: string, x: number, y1Mm: number, y2Mm: number) =>
  inventedSeam(id, { x1Mm: x, y1Mm, x2Mm: x, y2Mm }, () => 1);
const namesOf = (seams: readonly SeamResult[]) =>
  new Map(placeSeams({ seams, panel }).map(({ seam, name }) => [seam.id, name]));

/** A front cut from the panel: both joints in three pieces each, and its two crosscuts. */
function drawer(x1: number, x2: number): SeamResult[] {
  return [
    ...['upper', 'lower'].flatMap((row, index) => {
      const y = 70 + 90 * index;
      return [
        along(`${row} left`, y, 0, x1),
        along(`${row} middle`, y, x1, x2),
        along(`${row} right`, y, x2, panel.widthMm),
      ];
    }),
    across('left', x1, 72, 158),
    across('right', x2, 72, 158),
  ];
}

describe('names of seams', () => {
  it('say of a drawer front which piece is which', () => {
    const names = namesOf(drawer(117, 395));
    for (const [id, name] of names)
      expect(name).toBe(`${id} ${id.includes(' ') ? 'joint' : 'crosscut'}`);
  });

  it('name the joint under the front the middle one where a rail piece was not found', () => {
    const found = drawer(117, 395).filter(({ id }) => id !== 'lower right');
    const names = namesOf(found);
    expect(names.get('lower middle')).toBe('lower middle joint');
    expect(names.get('lower left')).toBe('lower left joint');
  });

  it('are true, and never two alike, whatever was not found', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 300, noNaN: true }),
        fc.double({ min: 60, max: 400, noNaN: true }),
        fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
        (x1, frontMm, isFound) => {
          const x2 = Math.min(x1 + frontMm, panel.widthMm - 20);
          fc.pre(x2 - x1 > 40);
          const found = drawer(x1, x2).filter((_, index) => isFound[index]);
          const names = namesOf(found);
          expect(new Set(names.values()).size).toBe(found.length);
          for (const { id, line } of found) {
            if (!id.includes(' ')) continue;
            const name = names.get(id)!;
            const centreMm = (line.x1Mm + line.x2Mm) / 2;
            // What bounds the panel's end is never called by the other end, nor the middle.
            if (id.endsWith('left')) expect(name).not.toMatch(/right|middle/);
            else if (id.endsWith('right')) expect(name).not.toMatch(/left|middle/);
            // Under the front: the middle, or the side that its own middle lies on.
            else if (name.includes('left')) expect(centreMm).toBeLessThan(panel.widthMm / 2);
            else if (name.includes('right'))
              expect(centreMm).toBeGreaterThanOrEqual(panel.widthMm / 2);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it('keep the order of the wood: no piece is called left of one that lies to its left', () => {
    const rank = ['far left', 'left', 'middle', 'right', 'far right'];
    const cuts = fc.uniqueArray(fc.integer({ min: 3, max: 47 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(cuts, fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }), (at, isFound) => {
        const ends = [0, ...at.map((each) => 10 * each).sort((a, b) => a - b), panel.widthMm];
        const pieces = ends
          .slice(1)
          .map((end, index) => along(String(index), 100, ends[index]!, end))
          .filter((_, index) => isFound[index]);
        const words = placeSeams({ seams: pieces, panel }).map(({ adjective }) => adjective);
        const ranks = words.map((word) => rank.indexOf(word));
        if (ranks.includes(-1)) return;
        expect([...ranks].sort()).toEqual(ranks);
      }),
    );
  });

  it('call what runs with the grain a joint though the grain runs up and down', () => {
    const up = { angleADeg: 88, angleBDeg: -89, changeDeg: 3, changeSeDeg: 1 };
    const standing: LineMm = { x1Mm: 200, y1Mm: 0, x2Mm: 200, y2Mm: 240 };
    const lying: LineMm = { x1Mm: 0, y1Mm: 100, x2Mm: 200, y2Mm: 100 };
    const seams = [
      inventedSeam('a', standing, () => 1, { grain: up }),
      inventedSeam('b', lying, () => 1, { grain: up }),
    ];
    const names = namesOf(seams);
    expect(names.get('a')).toBe('joint');
    expect(names.get('b')).toBe('crosscut');
  });
});
