import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../src/report/draw/boxInside.js';
import { visibilityRamp } from '../../src/report/ramp/visibilityRamp.js';
import { scorePicture } from '../../src/report/score/scorePicture.js';
import { scoreSvg } from '../../src/report/score/scoreSvg.js';
import { arbitraryScore } from '../support/arbitraryScore.js';
import {
  inventedChestPanel,
  inventedScore,
  inventedSeam,
  inventedSeamless,
} from '../support/inventedScore.js';

const drawing = fc.record({
  units: fc.constantFrom('in' as const, 'mm' as const),
  denominator: fc.constantFrom(16, 32, 64),
  widthPx: fc.constantFrom(320, 360, 560, 720, 1160, 2400),
  theme: fc.constantFrom('bright' as const, 'dark' as const),
  distanceMm: fc.constantFrom(600, 2000),
});
const along = { x1Mm: 0, y1Mm: 200, x2Mm: 760, y2Mm: 200 };

describe('the picture of a score', () => {
  it('says on the strip where a line has no piece, and only there', () => {
    const piece = (id: string, x1Mm: number, x2Mm: number) =>
      inventedSeam(id, { x1Mm, y1Mm: 200, x2Mm, y2Mm: 200 }, () => 0.2);
    const said = (...seams: ReturnType<typeof piece>[]) =>
      scorePicture(inventedScore(seams), { units: 'in', widthPx: 1160 }).labels.filter(
        ({ text }) => text === 'none found here',
      );
    expect(said(piece('a', 0, 300), piece('b', 300, 760))).toEqual([]);
    const { panel } = scorePicture(inventedScore([piece('a', 0, 300)]), {
      units: 'in',
      widthPx: 1160,
    });
    const [words, ...more] = said(piece('a', 0, 300));
    expect(more).toEqual([]);
    // Between 300 mm and the panel's end.
    const { widthMm } = inventedScore([]).panel;
    expect(words!.x).toBeGreaterThan(panel.x + (300 / widthMm) * panel.width);
    expect(words!.x + words!.width).toBeLessThan(panel.x + panel.width);
  });

  it('keeps every label inside and off every other, for any result and width', () => {
    fc.assert(
      fc.property(arbitraryScore, drawing, (result, options) => {
        const { labels, widthPx, heightPx } = scorePicture(result, options);
        const page = { x: 0, y: 0, width: widthPx, height: heightPx };
        const outside = labels.filter((label) => !boxInside(label, page));
        const clashes = labels.flatMap((a, i) =>
          labels.slice(i + 1).flatMap((b) => (boxesOverlap(a, b) ? [[a, b]] : [])),
        );
        expect({ outside, clashes }).toEqual({ outside: [], clashes: [] });
      }),
      { numRuns: 200 },
    );
  });

  it('writes no broken number and no address that leads out', () => {
    fc.assert(
      fc.property(arbitraryScore, drawing, (result, options) => {
        const svg = scoreSvg(result, options);
        expect(svg).not.toMatch(/NaN|Infinity|undefined|\de[+-]\d/);
        expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|\/\/\w/);
      }),
      { numRuns: 100 },
    );
  });

  it('is XML that another program reads (librsvg by sharp), at the size that it says', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryScore, drawing, async (result, options) => {
        const { svg, widthPx, heightPx } = scorePicture(result, {
          ...options,
          photoHref: 'a&b".jpg',
        });
        const { width, height } = await sharp(Buffer.from(svg)).metadata();
        expect(width).toBeCloseTo(widthPx, -0.5);
        expect(Math.abs(height! - heightPx)).toBeLessThan(2);
      }),
      { numRuns: 25 },
    );
  });

  it.each([0.2, 0.7, 1.5, 3, 6])('draws V = %d in the colour of its level only', (v) => {
    const svg = scoreSvg(inventedScore([inventedSeam('s', along, () => v)]), { units: 'in' });
    const level = visibilityRamp.findLast(({ fromV }) => v >= fromV)!;
    for (const { word, colour } of visibilityRamp) {
      const uses = svg.split(`fill="${colour}"`).length - 1;
      // Once in the legend; band, strip and heading besides for the level itself.
      expect(uses, word).toBe(word === level.word ? 4 : 1);
    }
  });

  it('hatches what cannot be told and colours nothing as good', () => {
    const svg = scoreSvg(inventedScore([inventedSeam('s', along, () => null)]), { units: 'in' });
    expect(svg.split('url(#score-hatch)').length - 1).toBe(4);
    for (const { colour } of visibilityRamp) {
      expect(svg.split(`fill="${colour}"`).length - 1).toBe(1);
    }
  });

  it('flags the worst place where it lies on the wood and in the strip', () => {
    const peak = inventedSeam('s', along, (t) => (Math.abs(t - 18.5 / 72) < 0.006 ? 6 : 1));
    const { labels, panel } = scorePicture(inventedScore([peak]), { units: 'in', headline: false });
    // Window 19 of 72 lies at 195.28 mm = 7 11/16 in.
    const named = labels.filter(({ text }) => text === '7 11/16 in');
    expect(named).toHaveLength(2);
    const expectedX = panel.x + (195.28 / 760) * panel.width;
    for (const { x, width } of named) {
      expect(Math.max(0, x - expectedX, expectedX - x - width)).toBeLessThan(8);
    }
    expect(named[0]!.y).toBeLessThan(panel.y + panel.height);
    expect(named[1]!.y).toBeGreaterThan(panel.y + panel.height);
  });

  it('makes the photo the largest thing and puts the rails beside it', () => {
    const { panel, widthPx } = scorePicture(inventedChestPanel, { units: 'in' });
    expect(panel.width).toBeGreaterThan(0.8 * widthPx);
    expect(panel.width / panel.height).toBeCloseTo(760 / 380, 6);
  });

  it('draws a panel without seams without a legend', () => {
    expect(scoreSvg(inventedSeamless, { units: 'mm' })).not.toContain('jumps out');
  });

  it('keeps hostile text harmless', () => {
    const seam = inventedSeam('s', along, () => null, {
      notes: [`<script>alert("1 & 2")</script>`],
    });
    const svg = scoreSvg(inventedScore([seam]), { units: 'in', photoHref: '"><script>' });
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });
});
