import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { type Bench, browserOrSkip, openBench } from './support/openBench.js';

let bench: Bench;
let page: Page;

const name = 'IMG_20261127_101530_oak_tabletop_four_boards_window_side.png';
const pages = ['Joints', 'Before the rip', 'Candidates', 'Boards', 'End grain', 'Shop sheet'];
const sidewaysPx = () =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe.skipIf(!browserOrSkip())('a photo with a long name on a phone', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (
      await bench.freshContext({ viewport: { width: 390, height: 844 }, hasTouch: true })
    ).newPage();
    const { png } = await drawnPanel({ width: 800, height: 600 });
    await page.goto(bench.app.url);
    await page.setInputFiles('input[data-part=choose]', { name, mimeType: '', buffer: png });
    await page.getByRole('heading', { name: 'Put a pin on each corner' }).waitFor();
  });
  afterAll(() => bench?.close());

  const neverSideways = async () => {
    for (const each of pages) {
      await page.getByRole('link', { name: each, exact: true }).click();
      await page.locator('main h1').waitFor();
      expect(await sidewaysPx(), each).toBe(0);
    }
  };

  it('pushes no page wider than the screen before it is pinned', neverSideways);

  it('is taken whole in one tap, and then pushes no page wider either', async () => {
    await page.getByRole('link', { name: 'Panel', exact: true }).click();
    await page.getByRole('button', { name: 'The panel fills the photo' }).click();
    // 800 x 600 pixels at 4 px/mm.
    await page.getByLabel('Length, left to right').fill('200 mm');
    await page.getByLabel('Width, top to bottom').fill('150 mm');
    await page.getByLabel('Width, top to bottom').press('Enter');
    await page.getByRole('button', { name: 'This is the panel' }).click();
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 60_000 });
    expect(await page.getByText('4.0 pixels to the millimetre').count()).toBe(1);
    await neverSideways();
    // The front to begin with has room on a small panel.
    expect(await page.locator('main h1').textContent()).not.toMatch(/too (short|narrow)/);
  }, 120_000);

  it('is followed by the next photo without a panel, which may be as large as the last', async () => {
    const { png } = await drawnPanel({ width: 800, height: 600 });
    const boards = ['a.png', 'b.png'].map((each) => ({ name: each, mimeType: '', buffer: png }));
    await page.setInputFiles('input[data-part=choose]', boards);
    for (const each of ['a', 'b']) {
      await page.locator('.photo-row button[aria-pressed=true]', { hasText: each }).waitFor();
      await page.getByRole('button', { name: /^As large as the last/ }).click();
      expect(await page.getByLabel('Width, top to bottom').inputValue()).toBe('5 29/32 in');
      await page.getByRole('button', { name: 'This is the panel' }).click();
    }
    await page.locator('h1.answer').waitFor();
    expect(page.url()).toMatch(/joints/);
  }, 60_000);
});
