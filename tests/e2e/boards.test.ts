import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { savedText } from './support/savedText.js';

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

  it('keep heart sides, planing, a neighbour and a match as the maker says', async () => {
    await judged();
    const before = await order();
    const name = (index: number) => before[index]!.split(',')[0]!;
    const choose = (of: string) => page.locator('.board', { hasText: of }).click();
    const said = () => page.locator('ul.said').textContent();
    const best = async () => {
      await page.getByRole('button', { name: 'Find the best order' }).click();
      await page.getByRole('button', { name: 'Undo: Lay the best order' }).waitFor();
      await judged();
    };
    const placeOf = async (of: string) =>
      (await order()).findIndex((board) => board.split(',')[0] === of);

    // Two that plane against each other are told as they lie, and set right on demand.
    await choose(name(0));
    await page.getByLabel('It planes cleanly').selectOption('left');
    await choose(name(1));
    await page.getByLabel('It planes cleanly').selectOption('right');
    await judged();
    expect(await said()).toContain('will tear out');
    await page.getByLabel('They plane').selectOption('oneWay');
    await judged();
    expect(await said()).toContain('are all to plane the same way, and do not');
    await best();
    expect(await said()).not.toContain('tear out');
    const turned = async (of: string) => (await order())[await placeOf(of)]!.includes('turned');
    const turnedBefore = [0, 1].map((index) => before[index]!.includes('turned'));
    const turnedNow = [await turned(name(0)), await turned(name(1))];
    expect(turnedNow[0] === turnedNow[1]).toBe(turnedBefore[0] !== turnedBefore[1]);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Change the rule for planing' }).click();

    // Neighbours, then a match that needs no slide and lies in the middle.
    await choose(name(0));
    await page.getByLabel('It stays beside').selectOption({ label: name(4) });
    await judged();
    expect(await said()).toContain('are to lie side by side');
    await best();
    expect(Math.abs((await placeOf(name(0))) - (await placeOf(name(4))))).toBe(1);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    await choose(name(0));
    await page.getByLabel(`With ${name(4)} it lies`).selectOption('book');
    await best();
    const middle = [await placeOf(name(0)), await placeOf(name(4))].sort();
    expect([
      [1, 2],
      [2, 3],
    ]).toContainEqual(middle);
    expect(await said()).toMatch(/Book-match of/);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Keep two boards together' }).click();
    await page.getByRole('button', { name: 'Undo: Keep two boards together' }).click();

    // Heart and bark sides by turns: two hearts never meet.
    for (const index of [0, 1]) {
      await choose(name(index));
      await page.getByLabel('Its heart side').selectOption('A');
    }
    await page.getByLabel('Heart sides', { exact: true }).selectOption('alternating');
    await judged();
    expect(await said()).toContain('heart sides are to alternate');
    await best();
    expect(Math.abs((await placeOf(name(0))) - (await placeOf(name(1))))).toBeGreaterThan(1);
    await page.getByRole('button', { name: 'Undo: Lay the best order' }).click();
    await page.getByRole('button', { name: 'Undo: Change the rule for heart sides' }).click();
    for (const _ of [0, 1])
      await page.getByRole('button', { name: 'Undo: Name the heart side' }).click();
    expect(await order()).toEqual(before);
    expect(errors).toEqual([]);
  });

  it('give a page to print and numbers to keep', async () => {
    await judged();
    const html = await savedText(page, 'Save the report');
    expect(html).toContain('From the top down');
    expect(html.match(/<image id="board-photo-/g)).toHaveLength(5);
    const numbers = JSON.parse(await savedText(page, 'Save the numbers'));
    expect(numbers.schema).toBe('seamgrain/arrange@1');
    expect(numbers.order).toHaveLength(5);
  });

  it('stand side by side as candidates, ranked, and one is taken to the rip', async () => {
    await page.getByRole('link', { name: 'Candidates' }).click();
    await page.locator('h1', { hasText: 'loses least' }).waitFor({ timeout: 60_000 });
    await page.locator('.candidate').nth(4).waitFor();
    expect(await page.locator('.candidate').count()).toBe(5);
    expect(await page.locator('.front-outline').count()).toBe(0);
    const first = page.locator('.candidate').first();
    const name = (await first.locator('strong').textContent())!.replace('1. ', '');
    expect(await page.locator('h1').textContent()).toContain(`${name} loses least`);
    await first.getByRole('button', { name: `Place a front on it: ${name}` }).click();
    await page.locator('.front-handle').waitFor();
    expect(await page.locator('.photo-row button[aria-pressed=true]').textContent()).toBe(name);
  });
});
