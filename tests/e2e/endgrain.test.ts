import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';

let bench: Bench;
let page: Page;
let errors: string[];

const headline = () => page.locator('h1.answer[aria-busy=false]');

describe.skipIf(!browserOrSkip())('the end of a board on the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.locator('button.card').filter({ hasText: 'The end of an oak board' }).click();
    await headline().waitFor({ timeout: 60_000 });
  });
  afterAll(() => bench?.close());

  it('says how it was sawn, with rings on the photo and angles under it', async () => {
    expect(await headline().textContent()).toMatch(/flatsawn/);
    expect(await page.locator('.panel-surface .marks path').count()).toBeGreaterThan(2);
    expect(await page.locator('.strip rect').count()).toBeGreaterThan(20);
  });

  it('takes a line laid along a ring instead, and undo lifts it again', async () => {
    await page.getByRole('button', { name: 'Lay a line along a ring' }).click();
    const box = (await page.locator('.panel-surface').boundingBox())!;
    const y = box.y + box.height / 2;
    await page.mouse.click(box.x + 0.3 * box.width, y);
    await page.mouse.click(box.x + 0.4 * box.width, y);
    await page.getByText('Flatsawn across the whole width.').first().waitFor();
    await page.getByText('tangent laid by hand').first().waitFor();
    await page.getByRole('button', { name: 'Undo: Lay a line along a ring' }).click();
    await page.locator('h1.answer', { hasText: 'Of the width' }).waitFor({ timeout: 60_000 });
    expect(errors).toEqual([]);
  });
});
