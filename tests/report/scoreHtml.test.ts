import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pictureTable } from '../../src/report/html/pictureTable.js';
import { scoreHtml } from '../../src/report/html/scoreHtml.js';
import { wipeBlock } from '../../src/report/html/wipeBlock.js';
import { arbitraryScore } from '../support/arbitraryScore.js';
import { inventedChestPanel, inventedScore, inventedSeam } from '../support/inventedScore.js';

const photoHref = 'data:image/png;base64,iVBORw0KGgo=';

/** Every opened tag is closed in order: a small check of our own for the page's HTML. */
function unbalanced(html: string): string | null {
  const empty = new Set(['meta', 'img', 'input', 'br', '!doctype']);
  const open: string[] = [];
  for (const [tag, close, name, self] of html.matchAll(
    /<(\/?)([a-z!][\w-]*)(?:"[^"]*"|[^">])*?(\/?)>/g,
  )) {
    if (empty.has(name!) || self) continue;
    if (!close) open.push(name!);
    else if (open.pop() !== name) return tag;
  }
  return open.length > 0 ? open.at(-1)! : null;
}

describe('the page of a score', () => {
  it('stands alone: no address in it leads out, the photo is in it once', () => {
    const html = scoreHtml(inventedChestPanel, { units: 'in', photoHref, distanceMm: 600 });
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(
      /https?:|url\((?!#)|@import/,
    );
    expect(html.split(photoHref).length - 1).toBe(1);
    expect(html).toContain("default-src 'none'");
    expect(html).not.toContain('<script');
  });

  it('has the sentence first, the numbers second, what it rests on last', () => {
    const html = scoreHtml(inventedChestPanel, { units: 'mm', photoHref, distanceMm: 600 });
    const places = ['<h1>', '<figure', 'Joint by joint', '<summary>Numbers', 'What this rests on'];
    const order = places.map((part) => html.indexOf(part));
    expect(Math.min(...order)).toBeGreaterThan(0);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(html).toMatch(/6\.2.pixels of the photo to the millimetre/);
    expect(html).toContain('The left crosscut was placed by hand.');
    expect(html).toContain('Light falls off by a third');
  });

  it('says "cannot tell" in the table for every null', () => {
    const seam = inventedSeam('s', { x1Mm: 0, y1Mm: 9, x2Mm: 300, y2Mm: 9 }, () => null, {
      lost: { mm: null, seMm: null, slideMm: null, slideSeMm: null },
      glueLine: { widthMm: null, contrast: null },
      colourStep: { deltaE00: null },
      p: null,
    });
    const html = scoreHtml(inventedScore([seam]), { units: 'mm' });
    const cells = html.split('<td class="untold">cannot tell</td>').length - 1;
    // v, chance, distance, cue, lost, slide, step, turn, colour, glue width, contrast, p.
    expect(cells).toBe(12);
  });

  it('has a row for a wedge where a joint tells one, and leaves many joints off paper', () => {
    const at = (yMm: number, wedgeMm: number | null) =>
      inventedSeam(`s${yMm}`, { x1Mm: 0, y1Mm: yMm, x2Mm: 300, y2Mm: yMm }, () => 1, {
        lost: { mm: 3, seMm: 0.2, slideMm: null, slideSeMm: null, wedgeMm, wedgeSeMm: 0.1 },
      });
    const row = '>More lost at the right or lower end<';
    expect(scoreHtml(inventedScore([at(9, null)]), { units: 'mm' })).not.toContain(row);
    const one = scoreHtml(inventedScore([at(9, 0.6)]), { units: 'mm' });
    expect(one).toContain(row);
    expect(one).toContain('<details><summary>Numbers');
    const many = Array.from({ length: 9 }, (_, k) => at(9 + 20 * k, null));
    const html = scoreHtml(inventedScore(many), { units: 'mm' });
    expect(html).toContain('<details class="long"><summary>Numbers');
  });

  it('is well formed with unique ids for any result', () => {
    fc.assert(
      fc.property(arbitraryScore, (result) => {
        const html = scoreHtml(result, { units: 'in', photoHref });
        expect(unbalanced(html)).toBeNull();
        const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
        expect(new Set(ids).size).toBe(ids.length);
        expect(html).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the blocks of other reports', () => {
  it('escape what they are given', () => {
    const hostile = '"><script>';
    const wipe = {
      beforeHref: hostile,
      afterHref: hostile,
      beforeName: hostile,
      widthPx: 4,
      heightPx: 3,
    };
    expect(wipeBlock(wipe)).not.toContain('<script>');
    const table = pictureTable(
      [hostile],
      [{ pictureHref: hostile, name: hostile, cells: [hostile, null] }],
    );
    expect(table).not.toContain('<script>');
    expect(unbalanced(table) ?? unbalanced(wipeBlock(wipe))).toBeNull();
    expect(table).toContain('cannot tell');
  });
});
