import { existsSync } from 'node:fs';
import fc from 'fast-check';
import { chromium } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../src/report/draw/boxInside.js';
import { scoreHtml } from '../../src/report/html/scoreHtml.js';
import { scorePicture } from '../../src/report/score/scorePicture.js';
import { arbitraryScore } from '../support/arbitraryScore.js';
import { inventedChestPanel, inventedManyBoards } from '../support/inventedScore.js';

/** What a browser really makes of the words: its own measured boxes, not our estimate. */

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

describe.skipIf(!existsSync(executablePath))('words as Chromium sets them', () => {
  it('stand inside the picture, within their estimated boxes, and off each other', async () => {
    const results = [
      inventedChestPanel,
      inventedManyBoards,
      ...fc.sample(arbitraryScore, { numRuns: 10, seed: 5 }),
    ];
    const browser = await chromium.launch({ executablePath, args });
    try {
      const page = await browser.newPage();
      for (const [index, result] of results.entries()) {
        const widthPx = [360, 720, 1160][index % 3]!;
        const picture = scorePicture(result, { units: index % 2 ? 'mm' : 'in', widthPx });
        await page.setContent(picture.svg);
        const texts = await page.evaluate(() =>
          [...document.querySelectorAll('text')].map((text) => {
            const { x, y, width, height } = text.getBBox();
            return { x, y, width, height, text: text.textContent ?? '' };
          }),
        );
        const whole = { x: 0, y: 0, width: picture.widthPx, height: picture.heightPx };
        texts.forEach((measured, i) => {
          expect(boxInside(measured, whole), JSON.stringify(measured)).toBe(true);
          // Line boxes of a font are taller than its signs: compare the ink's middle 70 %.
          const ink = {
            ...measured,
            y: measured.y + 0.15 * measured.height,
            height: 0.7 * measured.height,
          };
          const home = picture.labels.filter(({ text }) => text === measured.text);
          expect(
            home.some((label) =>
              boxInside(ink, { ...label, x: label.x - 1.5, width: label.width + 3 }),
            ),
            `${JSON.stringify(ink)} in ${JSON.stringify(home)}`,
          ).toBe(true);
          for (const other of texts.slice(i + 1)) {
            const otherInk = {
              ...other,
              y: other.y + 0.15 * other.height,
              height: 0.7 * other.height,
            };
            expect(boxesOverlap(ink, otherInk), `${measured.text} / ${other.text}`).toBe(false);
          }
        });
      }
    } finally {
      await browser.close();
    }
  });

  it('fit the page at phone, tablet and desk width, and ask for nothing from outside', async () => {
    const browser = await chromium.launch({ executablePath, args });
    try {
      for (const width of [320, 390, 768, 1280]) {
        const page = await browser.newPage({ viewport: { width, height: 800 } });
        const requests: string[] = [];
        page.on('request', (request) => requests.push(request.url()));
        await page.setContent(scoreHtml(inventedManyBoards, { units: 'in', distanceMm: 600 }));
        const scrolled = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(scrolled).toBeLessThanOrEqual(width);
        expect(await page.locator('figure:visible').count()).toBe(1);
        expect(requests).toEqual([]);
        await page.close();
      }
    } finally {
      await browser.close();
    }
  });
});
