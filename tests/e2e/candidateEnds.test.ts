import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompareResult } from '../../src/core/results/compareResult.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { runCli } from './support/runCli.js';
import { savedText } from './support/savedText.js';

let bench: Bench;
let page: Page;
let errors: string[];

const ranked = () =>
  page.getByRole('button', { name: 'Save the numbers' }).waitFor({ timeout: 60_000 });
const candidates = () => page.locator('.candidate');

describe.skipIf(!browserOrSkip())('the end of a candidate', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.locator('button.card').filter({ hasText: 'The end of an oak board' }).click();
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 60_000 });
    await page.setInputFiles('input[data-part=choose]', 'samples/board-1.jpg');
    await page.getByRole('button', { name: 'The panel fills the photo' }).click();
    await page.getByLabel('Length, left to right').fill('440 mm');
    await page.getByLabel('Width, top to bottom').fill('80 mm');
    await page.getByLabel('Width, top to bottom').press('Enter');
    await page.getByRole('button', { name: 'This is the panel' }).click();
    await page.getByRole('application', { name: /Photo of the panel/ }).waitFor();
    await page.getByRole('link', { name: 'Candidates' }).click();
  });
  afterAll(() => bench?.close());

  it('is named among the ends that are read, is no candidate then, and tells the cut', async () => {
    await ranked();
    expect(await candidates().count()).toBe(2);
    const board = candidates().filter({ hasText: 'board-1' });
    await board.getByLabel('Its end').selectOption({ label: 'end-grain' });
    await ranked();
    expect(await candidates().count()).toBe(1);
    await page.getByText(/By its end \d+\s%/).waitFor();
    // The sample's end is of another board, 168 mm wide: that is said.
    await page.getByText('is this end of that board?').first().waitFor();
    const numbers = JSON.parse(await savedText(page, 'Save the numbers')) as CompareResult;
    const season = ['--species', 'hard maple', '--from', '35%@70F', '--to', '80%@70F'];
    const answer = (await runCli(
      ...['compare', 'samples/board-1.jpg', '--size', '440mmx80mm', '--across', '80mm', ...season],
      ...['--end', 'samples/board-1.jpg=samples/end-grain.jpg', '--end-size', '168mmx34mm'],
    )) as CompareResult;
    const [shown, asked] = [numbers.candidates[0]!, answer.candidates[0]!];
    for (const cut of ['flatsawn', 'rift', 'quartered'] as const)
      expect(Math.abs(shown.cut![cut] - asked.cut![cut])).toBeLessThan(0.03);
    expect(shown.gapMm!).toBeCloseTo(asked.gapMm!, 1);
    expect(errors).toEqual([]);
  }, 120_000);

  it('is kept with the project and taken back by undo', async () => {
    await page.reload();
    await ranked();
    expect(await candidates().count()).toBe(1);
    const end = page.getByLabel('Its end');
    expect(await end.locator('option:checked').textContent()).toBe('end-grain');
    await end.selectOption({ label: 'none' });
    await expect.poll(() => candidates().count()).toBe(2);
    await page.getByRole('button', { name: 'Undo: Name its end' }).click();
    await expect.poll(() => candidates().count()).toBe(1);
    await page.getByRole('link', { name: 'Boards' }).click();
    await page.locator('.board', { hasText: 'board-1' }).waitFor();
    expect(await page.locator('.board').count()).toBe(1);
    expect(errors).toEqual([]);
  }, 120_000);
});
