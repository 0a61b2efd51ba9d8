import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeLayout } from '../../../src/core/shop/layout/computeLayout.js';
import type { LayoutInput } from '../../../src/core/shop/layout/layoutInput.js';
import { computeGap } from '../../../src/core/shop/movement/computeGap.js';
import { boxesOverlap } from '../../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../../src/report/draw/boxInside.js';
import type { SheetPage } from '../../../src/report/sheet/sheetPage.js';
import { sheetPages } from '../../../src/report/sheet/sheetPages.js';
import { textBox } from '../../../src/report/sheet/textBox.js';
import { arbitraryChest } from '../../core/shop/layout/arbitraryChest.js';
import { arbitraryLayout } from '../../core/shop/layout/arbitraryLayout.js';

const gap = computeGap({
  species: 'black walnut',
  acrossMm: 100,
  from: { kind: 'moisture', percent: 7 },
  to: { kind: 'moisture', percent: 12 },
});
const picture = { base64: '/9j/', widthPx: 1200, heightPx: 700 };
const chest: LayoutInput = {
  panel: { lengthMm: 914.4, widthMm: 508 },
  fronts: [{ lengthMm: 355.6, widthMm: 101.6, xMm: 279.4, yMm: 203.2 }],
  dressMm: 0.396875,
  trimMm: 1.5875,
  face: { lengthMm: 889, widthMm: 482.6 },
  thickness: { roughMm: 25.4, finishedMm: 22 },
};

function collisions(page: SheetPage): string[] {
  const labels = page.marks.flatMap((mark) => (mark.kind === 'text' ? [textBox(mark)] : []));
  const paper = { x: 0, y: 0, width: page.widthPx, height: page.heightPx };
  const outside = labels.filter((box) => !boxInside(box, paper)).map(({ text }) => `cut: ${text}`);
  const over = labels.flatMap((a, index) =>
    labels
      .slice(index + 1)
      // Lines of one paragraph may share the air between them, not their letters.
      .filter((b) => boxesOverlap(shrunk(a), shrunk(b)))
      .map((b) => `${a.text} / ${b.text}`),
  );
  // Words on a black bar are not read; the white ones stand there on purpose.
  const bars = page.marks.flatMap((mark) =>
    mark.kind === 'rect' && mark.fill !== undefined && mark.fill < 0.3 ? [mark] : [],
  );
  const dark = page.marks.flatMap((mark) =>
    mark.kind === 'text' && (mark.fill ?? 0) < 0.5
      ? bars.filter((bar) => boxesOverlap(shrunk(textBox(mark)), bar)).map(() => mark.text)
      : [],
  );
  return [...outside, ...over, ...dark.map((text) => `on black: ${text}`)];
}

function shrunk(box: { x: number; y: number; width: number; height: number }) {
  return { ...box, y: box.y + 0.04 * box.height, height: 0.92 * box.height };
}

describe('the shop sheet', () => {
  it('prints no words over others and cuts none off, for 50 random layouts on both papers', () => {
    fc.assert(
      fc.property(
        fc.oneof(arbitraryLayout, { arbitrary: arbitraryChest, weight: 3 }),
        fc.constantFrom('A4' as const, 'Letter' as const),
        fc.boolean(),
        fc.boolean(),
        fc.constantFrom(
          { style: 'fraction', denominator: 64 } as const,
          { style: 'decimal', places: 3 } as const,
          { style: 'metric', stepMm: 0.5 } as const,
        ),
        (input, paper, withGap, withPicture, rule) => {
          const layout = computeLayout({ ...input, rule });
          const pages = sheetPages({
            layout,
            paper,
            gap: withGap ? gap : null,
            picture: withPicture ? picture : null,
          });
          for (const page of pages) expect(collisions(page)).toEqual([]);
          const words = pages.flatMap(({ marks }) =>
            marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
          );
          for (const { setting } of layout.cuts) expect(words).toContain(setting.text);
          for (const { name } of layout.pieces) expect(words).toContain(name);
        },
      ),
      { numRuns: 50, seed: 7 },
    );
  });

  it('puts an ordinary layout with photograph and gap on one page of either paper', () => {
    const layout = computeLayout(chest);
    for (const paper of ['A4', 'Letter'] as const) {
      const pages = sheetPages({ layout, gap, picture, paper });
      expect(pages.length).toBe(1);
      expect(collisions(pages[0]!)).toEqual([]);
    }
  });

  it('sets the numbers for the fence large enough for arm’s length', () => {
    const layout = computeLayout(chest);
    const [page] = sheetPages({ layout, gap, picture, paper: 'Letter' });
    const texts = page!.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const settings = layout.cuts.map(({ setting }) => setting.text);
    // 15 pt figures are about 4 mm tall: 20 arc minutes at 0.65 m, four times the finest an eye reads.
    for (const text of settings) {
      const size = Math.max(...texts.filter((one) => one.text === text).map((t) => t.sizePx));
      expect(size * 0.75).toBeGreaterThan(15);
    }
    expect(Math.min(...texts.map(({ sizePx }) => sizePx * 0.75))).toBeGreaterThan(6);
  });

  it('carries every caution of every step', () => {
    const layout = computeLayout(chest);
    const [page] = sheetPages({ layout, gap, picture, paper: 'A4' });
    const words = page!.marks
      .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
      .join(' ');
    const all = [...layout.steps.flatMap(({ cautions }) => cautions), ...layout.cautions];
    for (const caution of all) {
      for (const part of caution.split(/[.;:] /)) expect(words).toContain(part.split(' ')[0]);
    }
    expect(words).toMatch(/saw’s manual, local codes and trained practice/);
  });
});
