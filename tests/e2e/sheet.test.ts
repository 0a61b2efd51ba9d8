import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { expectSameNumbers } from './support/expectSameNumbers.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';
import { runCli } from './support/runCli.js';
import { savedText } from './support/savedText.js';

let bench: Bench;
let page: Page;
let errors: string[];

const type = async (label: string, text: string) => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel(label, { exact: true }).press('Enter');
};

describe.skipIf(!browserOrSkip())('the shop sheet page', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    const { png } = await drawnPanel({ width: 1000, height: 700 });
    await page.goto(bench.app.url);
    await pinByHand(page, { name: 'p.png', mimeType: 'image/png', buffer: png }, '24 in', '16 in');
    await page.getByRole('link', { name: 'Shop sheet' }).click();
  });
  afterAll(() => bench?.close());

  it('gives the numbers that the command line gives', async () => {
    await type('Front along the grain', '12 1/2');
    await type('Front across the grain', '4 in');
    await type('Front from the left', '5 3/4 in');
    await type('Front from the top', '6 in');
    await type('Dressed off each jointed edge', '1/64');
    const saved = JSON.parse(await savedText(page, 'Save the numbers'));
    const words = ['--panel', '24inx16in', '--front', '12.5inx4in', '--at', '5.75in,6in'];
    const allowances = ['--dress', '1/64in', '--rule', '1/32in'];
    expectSameNumbers(saved.layout, await runCli('layout', ...words, ...allowances));
  });

  it('drags the front over the panel in one step that undo takes back', async () => {
    const front = page.getByRole('button', { name: /^The front\./ });
    const before = await page.getByLabel('Front from the left').inputValue();
    await front.scrollIntoViewIfNeeded();
    const box = (await front.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 8 });
    await page.mouse.up();
    expect(await page.getByLabel('Front from the left').inputValue()).not.toBe(before);
    await page.getByRole('button', { name: 'Undo: Move the front' }).click();
    expect(await page.getByLabel('Front from the left').inputValue()).toBe(before);
  });

  it('says by how much a panel is too small, and when a climate makes no sense', async () => {
    await type('Front across the grain', '15 7/8 in');

    await page.getByRole('heading', { level: 1, name: /small|short|narrow/i }).waitFor();
    await type('Front across the grain', '4 in');
    await type('Air when it is fitted', 'muggy');
    await page.getByText("'muggy' is not a climate").waitFor();
    await page.getByLabel('Air when it is fitted').press('Escape');
  });

  it('lays the sheet out on paper and saves it as PDF', async () => {
    const pdf = await savedText(page, 'Save as PDF');
    expect(pdf.startsWith('%PDF-1.')).toBe(true);
    await page.getByRole('button', { name: 'Print the sheet' }).click();
    const paper = page.frameLocator('iframe.paper');
    await paper.locator('svg[aria-label="Shop sheet"]').first().waitFor({ state: 'attached' });
    expect(await paper.locator('svg image, svg text').count()).toBeGreaterThan(20);
    expect(errors).toEqual([]);
  });
});
