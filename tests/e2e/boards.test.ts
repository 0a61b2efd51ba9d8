import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';

let bench: Bench;
let page: Page;
let errors: string[];

const order = () =>
  page
    .locator('.board')
    .evaluateAll((boards) =>
      boards.map((board) =>
        (board.getAttribute('aria-label') ?? '').replace(/, \d+ from the top/, ''),
      ),
    );
const judged = () => page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 30_000 });

describe.skipIf(!browserOrSkip())('boards on the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.locator('button.card').filter({ hasText: 'Five boards' }).click();
    await judged();
  });
  afterAll(() => bench?.close());

  it('lie as they were photographed, with every joint judged', async () => {
    expect(await order()).toEqual(['board-1', 'board-2', 'board-3', 'board-4', 'board-5']);
    expect(await page.locator('.rail rect.bar').count()).toBe(4);
    expect(await page.locator('h1').textContent()).toMatch(
      /^Four joints\. The worst, between board-\d and/,
    );
  });

  it('are dragged into another order in one step, and undo brings them back', async () => {
    const boards = page.locator('.board');
    await boards.first().evaluate((element) => element.scrollIntoView({ block: 'start' }));
    const from = (await boards.nth(2).boundingBox())!;
    const to = (await boards.nth(0).boundingBox())!;
    const x = from.x + 200;
    await page.mouse.move(x, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(x, to.y + to.height / 3, { steps: 25 });
    await page.mouse.up();
    expect(await order()).toEqual(['board-3', 'board-1', 'board-2', 'board-4', 'board-5']);
    await judged();
    await page.getByRole('button', { name: 'Undo: Move a board' }).click();
    expect(await order()).toEqual(['board-1', 'board-2', 'board-3', 'board-4', 'board-5']);
  });

  it('are turned and moved by buttons, and a turn shows in the joints', async () => {
    await judged();
    const bars = () =>
      page
        .locator('.rail rect.bar')
        .evaluateAll((all) => all.map((bar) => bar.getAttribute('width')));
    const before = await bars();
    await page.getByRole('button', { name: 'board-2, 2 from the top' }).click();
    await page.getByRole('button', { name: 'Turn end for end' }).click();
    await judged();
    await expect.poll(bars).not.toEqual(before);
    await page.getByRole('button', { name: 'Down', exact: true }).click();
    expect((await order())[2]).toBe('board-2, turned end for end');
    expect(errors).toEqual([]);
  });

  it('are laid in the best order by one tap, in one step that undo takes back', async () => {
    await judged();
    const before = await order();
    const worst = async () => {
      await judged();
      const widths = await page
        .locator('.rail rect.bar')
        .evaluateAll((bars) => bars.map((bar) => Number(bar.getAttribute('width'))));
      return widths.reduce((sum, width) => sum + 2 ** (3 * (width / 9 - 2)), 0);
    };
    const cost = await worst();
    await page.getByRole('button', { name: 'Find the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).waitFor();
    // The sum of V^3 as the rail draws it: a bar is log2 V long.
    expect(await worst()).toBeLessThan(cost);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    expect(await order()).toEqual(before);
    expect(errors).toEqual([]);
  });

  it('keep the place that the maker gives them, slid within the length to spare', async () => {
    await judged();
    const before = await order();
    await page.locator('.board').nth(3).click();
    await page.getByLabel('It lies').selectOption('top');
    await page.getByRole('button', { name: 'Find the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).waitFor();
    await judged();
    expect((await order())[0]).toContain(before[3]!.split(',')[0]!);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Keep a board in its place' }).click();
    expect(await order()).toEqual(before);
    await page.getByLabel('Length to spare for sliding').fill('20 mm');
    await page.getByLabel('Length to spare for sliding').press('Enter');
    await page.getByRole('button', { name: 'Slide right' }).click();
    const left = (n: number) =>
      page
        .locator('.board')
        .nth(n)
        .evaluate((board) => board.getBoundingClientRect().left);
    expect(await left(3)).toBeGreaterThan(await left(2));
    expect(errors).toEqual([]);
  });

  it('show both faces, one photo as the back of another', async () => {
    await page.locator('.board').first().click();
    const count = await page.locator('.board').count();
    const name = (await page.locator('.board').nth(1).getAttribute('aria-label'))!.split(',')[0]!;
    await page.getByLabel('Its other face').selectOption({ label: name });
    expect(await page.locator('.board').count()).toBe(count - 1);
    await page.getByRole('button', { name: 'Turn it over' }).click();
    expect(await page.locator('.board-name').first().textContent()).toContain('other face');
    await judged();
    await page.getByRole('button', { name: 'Undo: Turn a board over' }).click();
    await page.getByRole('button', { name: 'Undo: Name the other face' }).click();
    expect(await page.locator('.board').count()).toBe(count);
    expect(errors).toEqual([]);
  });

  it('stand side by side as candidates, ranked, and one is taken to the rip', async () => {
    await page.getByRole('link', { name: 'Candidates' }).click();
    await judged();
    expect(await page.locator('.candidate').count()).toBe(5);
    const first = page.locator('.candidate').first();
    const name = (await first.locator('strong').textContent())!.replace('1. ', '');
    expect(await page.locator('h1').textContent()).toContain(`${name} loses least`);
    await first.getByRole('button', { name: `Place a front on it: ${name}` }).click();
    await page.locator('.front-handle').waitFor();
    expect(await page.locator('.photo-row button[aria-pressed=true]').textContent()).toBe(name);
  });
});
