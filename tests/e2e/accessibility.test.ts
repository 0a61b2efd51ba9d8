import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { type Bench, browserOrSkip, openBench } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';

interface Axe {
  run(): Promise<{
    violations: { id: string; impact: string | null; nodes: { html: string }[] }[];
  }>;
}

let bench: Bench;
let picture: { name: string; mimeType: string; buffer: Buffer };
let axeSource: string;
const pages = [
  'Panel',
  'Joints',
  'Before the rip',
  'Candidates',
  'Boards',
  'End grain',
  'Shop sheet',
];

async function seriousFaults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(() => (window as unknown as { axe: Axe }).axe.run());
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

/** What a finger must hit and is smaller than 44 px: words in a sentence apart. */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button, select, a, summary, input, label.tick')]
      .filter((element) => {
        const box = element.getBoundingClientRect();
        if (box.width === 0 || element.closest('label.tick') !== element.closest('label'))
          return false;
        if (element.matches('label.tick input') || element.matches('.skip')) return false;
        return box.height < 43.5 || (box.width < 43.5 && !element.matches('.front-handle'));
      })
      .map((element) => element.outerHTML.slice(0, 120)),
  );
}

describe.skipIf(!browserOrSkip())('every page', () => {
  beforeAll(async () => {
    bench = await openBench();
    const drawn = await drawnPanel({ width: 1000, height: 700 });
    picture = { name: 'rails.png', mimeType: 'image/png', buffer: drawn.png };
    axeSource = await readFile(
      createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
      'utf8',
    );
  });
  afterAll(() => bench?.close());

  it.each([
    [1280, 'light'],
    [820, 'dark'],
    [390, 'light'],
  ] as const)('has no serious fault at %i px, %s', async (width, colorScheme) => {
    const context = await bench.freshContext({ viewport: { width, height: 844 }, colorScheme });
    const page = await context.newPage();
    await page.goto(bench.app.url);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const faults: Record<string, string[]> = { Start: await seriousFaults(page) };
    const small: Record<string, string[]> = { Start: await smallTargets(page) };
    await pinByHand(page, picture, '24', '15');
    for (const name of pages) {
      await page.getByRole('link', { name, exact: true }).click();
      await page.waitForTimeout(300);
      faults[name] = await seriousFaults(page);
      small[name] = await smallTargets(page);
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - window.innerWidth,
      );
      expect(overflow, `${name} is wider than the screen`).toBeLessThanOrEqual(0);
    }
    const none = Object.fromEntries(['Start', ...pages].map((name) => [name, []]));
    expect(faults).toEqual(none);
    expect(small).toEqual(none);
    await context.close();
  });
});
