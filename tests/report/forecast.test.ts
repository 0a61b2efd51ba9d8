import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../src/report/draw/boxInside.js';
import { describeForecast } from '../../src/report/forecast/describeForecast.js';
import { forecastHtml } from '../../src/report/forecast/forecastHtml.js';
import { forecastPicture } from '../../src/report/forecast/forecastPicture.js';
import { arbitraryForecast } from '../support/arbitraryForecast.js';

const drawing = fc.record({
  units: fc.constantFrom('in' as const, 'mm' as const),
  widthPx: fc.constantFrom(320, 360, 720, 1160, 2400),
  theme: fc.constantFrom('bright' as const, 'dark' as const),
});

describe('the picture of a forecast', () => {
  it('keeps every label inside and off every other, for any result and width', () => {
    fc.assert(
      fc.property(arbitraryForecast, drawing, (result, options) => {
        const { labels, widthPx, heightPx } = forecastPicture(result, options);
        const page = { x: 0, y: 0, width: widthPx, height: heightPx };
        const outside = labels.filter((label) => !boxInside(label, page));
        const clashes = labels.flatMap((a, i) =>
          labels.slice(i + 1).flatMap((b) => (boxesOverlap(a, b) ? [[a.text, b.text]] : [])),
        );
        expect({ outside, clashes }).toEqual({ outside: [], clashes: [] });
      }),
      { numRuns: 150 },
    );
  });

  it('is XML that another program reads, with no broken number', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryForecast, drawing, async (result, options) => {
        const { svg, widthPx } = forecastPicture(result, { ...options, photoHref: 'a&b".jpg' });
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        const { width } = await sharp(Buffer.from(svg)).metadata();
        expect(Math.abs((width ?? 0) - widthPx)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 25 },
    );
  });
});

describe('a forecast in words and as a page', () => {
  it('never says NaN, undefined or null, and ends its sentences', () => {
    fc.assert(
      fc.property(
        arbitraryForecast,
        fc.constantFrom('in' as const, 'mm' as const),
        (result, units) => {
          const { headline, lines } = describeForecast(result, { units });
          for (const line of [headline, ...lines]) {
            expect(line).not.toMatch(/NaN|undefined|null/);
            expect(line).toMatch(/[.!?]$/);
          }
        },
      ),
    );
  });

  it('stands alone', () => {
    fc.assert(
      fc.property(arbitraryForecast, (result) => {
        const photoHref = 'data:image/png;base64,AA';
        const page = forecastHtml(result, { units: 'in', photoHref });
        expect(page).not.toMatch(/NaN|undefined/);
        expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
      }),
      { numRuns: 30 },
    );
  });
});
