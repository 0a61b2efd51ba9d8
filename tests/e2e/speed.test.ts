import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { type Bench, browserOrSkip, openBench } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';

let bench: Bench;
let page: Page;
let photo: { name: string; mimeType: string; buffer: Buffer };

interface Kept {
  readonly longTasks: number[];
}

/** Keeps every stretch of 50 ms or more in which the page could answer nothing. */
async function watchPage(): Promise<void> {
  await page.addInitScript(() => {
    const longTasks: number[] = [];
    (window as unknown as Kept & Window & { longTasks: number[] }).longTasks = longTasks;
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longTasks.push(Math.round(duration));
    }).observe({ type: 'longtask' });
  });
}
const longTasks = () => page.evaluate(() => (window as unknown as Kept).longTasks.splice(0));

describe.skipIf(!browserOrSkip())('a 12 megapixel photo', () => {
  beforeAll(async () => {
    bench = await openBench();
    const { png } = await drawnPanel({ width: 4000, height: 3000 });
    const buffer = await sharp(png).jpeg({ quality: 90 }).toBuffer();
    photo = { name: 'large.jpg', mimeType: 'image/jpeg', buffer };
    page = await (await bench.freshContext()).newPage();
    await watchPage();
    await page.goto(bench.app.url);
  });
  afterAll(() => bench?.close());

  it('leaves the page free to answer within 100 ms while it is scored', async () => {
    await pinByHand(page, photo, '600 mm', '450 mm');
    await longTasks();
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    const panel = page.getByRole('application');
    await panel.focus();
    const answers: number[] = [];
    for (const key of ['+', '+', 'ArrowLeft', 'ArrowUp', '-', '0']) {
      answers.push(
        await panel.evaluate(async (element, pressed) => {
          const start = performance.now();
          element.dispatchEvent(new KeyboardEvent('keydown', { key: pressed, bubbles: true }));
          await new Promise((resolve) => setTimeout(resolve));
          return performance.now() - start;
        }, key),
      );
      await page.waitForTimeout(120);
    }
    const tasks = await longTasks();
    console.log(
      `key to answer, ms: ${answers.map(Math.round).join(' ')}; long tasks, ms: ${tasks.join(' ') || 'none'}`,
    );
    expect(Math.max(...answers)).toBeLessThan(100);
    expect(Math.max(0, ...tasks)).toBeLessThan(100);
  });

  it('stops at once when told to, and starts again when asked', async () => {
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    const stoppedMs = await page.evaluate(async () => {
      const named = (word: string) =>
        [...document.querySelectorAll('button')].find(({ textContent }) => textContent === word);
      const start = performance.now();
      named('Stop')!.click();
      while (!named('Score it now')) await new Promise(requestAnimationFrame);
      return performance.now() - start;
    });
    expect(stoppedMs).toBeLessThan(100);
    await page.getByRole('button', { name: 'Score it now' }).click();
    await page.getByRole('button', { name: 'Stop' }).waitFor();
  });
});
