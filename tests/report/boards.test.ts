import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { ArrangeResult } from '../../src/core/results/arrangeResult.js';
import type { CompareResult } from '../../src/core/results/compareResult.js';
import type { Cue } from '../../src/core/results/visibilityResult.js';
import { visibilityWord } from '../../src/core/visibility/visibilityWord.js';
import { arrangeHtml } from '../../src/report/arrange/arrangeHtml.js';
import { arrangePicture } from '../../src/report/arrange/arrangePicture.js';
import { describeArrange } from '../../src/report/arrange/describeArrange.js';
import { compareHtml } from '../../src/report/compare/compareHtml.js';
import { comparePicture } from '../../src/report/compare/comparePicture.js';
import { describeCompare } from '../../src/report/compare/describeCompare.js';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../src/report/draw/boxInside.js';
import type { Label } from '../../src/report/draw/piece.js';

const drawing = fc.record({
  units: fc.constantFrom('in' as const, 'mm' as const),
  widthPx: fc.constantFrom(320, 360, 720, 1160, 2400),
  theme: fc.constantFrom('bright' as const, 'dark' as const),
});
const visible = fc.option(fc.double({ min: 0, max: 9, noNaN: true }), { nil: null });
const cue = fc.constantFrom<Cue | null>('break', 'direction', 'spacing', 'colour', null);
const name = fc.constantFrom(
  'a.jpg',
  'photos/second board.jpg',
  'C:\\wood\\a<b&c.png',
  'a-very-long-name-of-a-photo-that-goes-on.jpeg',
);

const arranged: fc.Arbitrary<ArrangeResult> = fc
  .array(
    fc.record({
      photo: name,
      face: fc.constantFrom('A' as const, 'B' as const),
      turned: fc.boolean(),
      lengthMm: fc.integer({ min: 300, max: 500 }),
      widthMm: fc.integer({ min: 30, max: 150 }),
      slideMm: fc.integer({ min: -12, max: 12 }),
      isImagined: fc.boolean(),
      v: visible,
      cue,
    }),
    { minLength: 2, maxLength: 13 },
  )
  .map((boards) => ({
    schema: 'seamgrain/arrange@1',
    order: boards.map(({ v, cue, ...board }, i) => ({
      ...board,
      board: i + 1,
      showsHeart: null,
      planesTowards: null,
    })),
    joints: boards.slice(1).map(({ photo, v, cue }, i) => ({
      above: boards[i]!.photo,
      below: photo,
      v,
      cue,
      word: v === null ? null : visibilityWord(v),
      grown: null,
    })),
    totalCost: 1,
    exact: boards.length < 13,
    laid: 'leastSeen',
    leastCost: 1,
    panel: { lengthMm: 300, widthMm: 400 },
    matched: [],
    conflicts: [],
    notes: [],
  }));

const compared: fc.Arbitrary<CompareResult> = fc
  .array(fc.record({ photo: name, vMedian: visible, cue, isImagined: fc.boolean() }), {
    minLength: 1,
    maxLength: 6,
  })
  .map((all) => ({
    schema: 'seamgrain/compare@1',
    ...{ distanceMm: 600, kerfMm: 3.175, dressMm: 0, front: null },
    candidates: all.map(({ cue, ...one }, i) => ({
      ...one,
      rank: i + 1,
      ...{ widthMm: 400 + 20 * i, heightMm: 80 },
      vBest: one.vMedian,
      bestYMm: one.vMedian === null ? null : 33,
      front: null,
      decides:
        all.length < 2
          ? null
          : {
              by: 'median' as const,
              cue,
              v: one.vMedian,
              otherV: all[i === 0 ? 1 : i - 1]!.vMedian,
            },
      cut: i % 2 ? { flatsawn: 0.2, rift: 0.8, quartered: 0 } : null,
      gapMm: i % 2 ? 1.2 : null,
      notes: ['A note.'],
    })),
  }));

function expectApart(labels: readonly Label[], widthPx: number) {
  const page = { x: 0, y: 0, width: widthPx, height: 1e6 };
  const outside = labels.filter((label) => !boxInside(label, page));
  const clashes = labels.flatMap((a, i) =>
    labels.slice(i + 1).flatMap((b) => (boxesOverlap(a, b) ? [[a.text, b.text]] : [])),
  );
  expect({ outside, clashes }).toEqual({ outside: [], clashes: [] });
}

describe('the picture of', () => {
  it('an arranged panel keeps every label inside and off every other', () => {
    fc.assert(
      fc.property(arranged, drawing, (result, options) => {
        const { labels, widthPx, svg } = arrangePicture(result, { ...options, jointMm: 1 });
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expectApart(labels, widthPx);
      }),
      { numRuns: 150 },
    );
  });

  it('candidates keeps every label inside and off every other', () => {
    fc.assert(
      fc.property(compared, drawing, (result, options) => {
        const { labels, widthPx, svg } = comparePicture(result, options);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expectApart(labels, widthPx);
      }),
      { numRuns: 150 },
    );
  });

  it('either is XML that another program reads', async () => {
    await fc.assert(
      fc.asyncProperty(arranged, compared, drawing, async (one, two, options) => {
        const photoHrefs = Array.from({ length: 13 }, () => 'a&b".jpg');
        for (const { svg, widthPx } of [
          arrangePicture(one, { ...options, photoHrefs, jointMm: 1 }),
          comparePicture(two, { ...options, photoHrefs }),
        ]) {
          const { width } = await sharp(Buffer.from(svg)).metadata();
          expect(Math.abs((width ?? 0) - widthPx)).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 15 },
    );
  });
});

describe('boards in words and as a page', () => {
  it('never say NaN, undefined or null, and stand alone', () => {
    fc.assert(
      fc.property(arranged, compared, (one, two) => {
        const units = { units: 'in' as const };
        const hrefs = Array.from({ length: 13 }, () => 'data:image/png;base64,AA');
        const words = [...describeArrange(one, units), ...describeCompare(two, units)];
        for (const line of words) expect(line).not.toMatch(/NaN|undefined|null/);
        const pages = [
          arrangeHtml(one, { ...units, photoHrefs: hrefs, jointMm: 1, distanceMm: 600 }),
          compareHtml(two, { ...units, photoHrefs: hrefs, smallHrefs: hrefs }),
        ];
        for (const page of pages) {
          expect(page).not.toMatch(/NaN|undefined/);
          expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
          const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
          expect(new Set(ids).size).toBe(ids.length);
        }
      }),
      { numRuns: 30 },
    );
  });
});
