import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CompareResult } from '../../src/core/results/compareResult.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { runCli } from './support/runCli.js';
import { savedText } from './support/savedText.js';

let bench: Bench;
let page: Page;
let errors: string[];

describe.skipIf(!browserOrSkip())('candidates on the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.locator('button.card').filter({ hasText: 'Five boards' }).click();
    await page.locator('.board').nth(4).waitFor({ timeout: 30_000 });
  });
  afterAll(() => bench?.close());

  it('are ranked for a front where it would be cut, as the command line ranks them', async () => {
    for (const name of ['board-3', 'board-4', 'board-5']) {
      await page.locator('.board', { hasText: name }).click();
      await page.getByRole('button', { name: 'Take it away' }).click();
    }
    await page.getByRole('link', { name: 'Candidates' }).click();
    await page.getByLabel('They are wanted for').selectOption('front');
    for (const [label, length] of [
      ['Front along the grain', '400 mm'],
      ['Front across the grain', '60 mm'],
    ] as const) {
      await page.getByLabel(label).fill(length);
      await page.getByLabel(label).press('Enter');
    }
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 60_000 });
    const photos = [1, 2].map((n) => `samples/board-${n}.jpg`);
    const asked = ['--size', '440mmx80mm', '--front', '400mmx60mm'];
    const { candidates } = (await runCli('compare', ...photos, ...asked)) as CompareResult;
    const names = await page.locator('.candidate strong').allTextContents();
    expect(names).toEqual(
      candidates.map(({ rank, photo }) => `${rank}. ${photo.replace(/.*\/(.*)\.jpg/, '$1')}`),
    );
    const outlines = await page
      .locator('.front-outline .over')
      .evaluateAll((all) =>
        all.map((one) => ['x', 'y'].map((axis) => Number(one.getAttribute(axis)))),
      );
    expect(outlines).toHaveLength(2);
    candidates.forEach(({ front }, index) => {
      expect(outlines[index]![0]).toBeCloseTo(front!.xMm, 3);
      expect(outlines[index]![1]).toBeCloseTo(front!.yMm, 3);
    });
    await page.getByLabel('Front across the grain').fill('90 mm');
    await page.getByLabel('Front across the grain').press('Enter');
    await page.locator('h1', { hasText: 'can be taken from none' }).waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Undo: Change the size of the front' }).click();
    await page.locator('h1', { hasText: 'loses least: at the best place' }).waitFor();
    const first = page.locator('.candidate').first();
    await first.getByRole('button', { name: /Place a front on it/ }).click();
    const handle = page.locator('.front-handle').first();
    await handle.waitFor();
    await page.getByRole('button', { name: 'Undo: Place the front on another photo' }).waitFor();
    expect(errors).toEqual([]);
  }, 120_000);

  it('tell how each is sawn and what decides, and the numbers are those of the command line', async () => {
    await page.getByRole('link', { name: 'Candidates' }).click();
    await page.getByLabel('They are wanted for').selectOption('rip');
    const numbers = JSON.parse(await savedText(page, 'Save the numbers')) as CompareResult;
    const photos = [1, 2].map((n) => `samples/board-${n}.jpg`);
    const season = ['--species', 'hard maple', '--from', '35%@70F', '--to', '80%@70F'];
    const asked = ['--size', '440mmx80mm', '--across', '80mm', ...season];
    const { candidates } = (await runCli('compare', ...photos, ...asked)) as CompareResult;
    numbers.candidates.forEach((shown, k) => {
      const { photo, rank, vMedian, decides, gapMm, cut } = candidates[k]!;
      expect(photo).toContain(shown.photo);
      expect(shown.rank).toBe(rank);
      expect(shown.vMedian).toBeCloseTo(vMedian!, 6);
      expect(shown.vBest).toBeCloseTo(candidates[k]!.vBest!, 6);
      expect(shown.bestYMm).toBeCloseTo(candidates[k]!.bestYMm!, 6);
      expect(shown.decides?.by).toBe(decides?.by);
      expect(shown.cut).toEqual(cut);
      expect(shown.cutFromFace).toEqual(candidates[k]!.cutFromFace);
      // Browser and sharp decode a JPEG a level apart here and there: angles read off it differ a little.
      expect(shown.gapMm).toBeCloseTo(gapMm!, shown.cutFromFace ? 2 : 3);
    });
    const said = await page.locator('.candidate').allTextContents();
    expect(said[0]).toMatch(/Loses least: .* than in board-/);
    for (const words of said) expect(words).toMatch(/wants a gap of/);
    const told = said.find((words) => words.includes('By its face about'));
    expect(told).toMatch(/%\sflatsawn.*give or take \d+\s%/);
    expect(errors).toEqual([]);
  }, 120_000);

  it('can be stopped and go on, with what was read so far kept', async () => {
    await page.getByLabel('Kerf of this saw').fill('3 mm');
    await page.getByLabel('Kerf of this saw').press('Enter');
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByText('Stopped.').waitFor();
    await page.waitForTimeout(1500);
    expect(await page.locator('h1.answer[aria-busy=true]').count()).toBe(1);
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Undo: Change the kerf' }).click();
    expect(errors).toEqual([]);
  }, 120_000);

  it('have a drawn board among them, said to be drawn, ranked as the command line ranks it', async () => {
    await page.getByRole('button', { name: 'Add a board as it would be sawn' }).click();
    const drawn = page.locator('.candidate.drawn');
    await drawn.getByLabel('Sawn').selectOption('rift');
    await drawn.getByText('not photographed').waitFor({ timeout: 60_000 });
    await drawn.getByText('Drawn with its rings at 45°').waitFor({ timeout: 60_000 });
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 60_000 });
    const numbers = JSON.parse(await savedText(page, 'Save the numbers')) as CompareResult;
    const photos = [1, 2].map((n) => `samples/board-${n}.jpg`);
    const season = ['--species', 'hard maple', '--from', '35%@70F', '--to', '80%@70F'];
    const asked = ['--size', '440mmx80mm', '--across', '80mm', '--imagine', '45deg', ...season];
    const { candidates } = (await runCli('compare', ...photos, ...asked)) as CompareResult;
    expect(numbers.candidates.map(({ isImagined }) => isImagined)).toEqual(
      candidates.map(({ isImagined }) => isImagined),
    );
    const of = (all: CompareResult['candidates']) => all.find(({ isImagined }) => isImagined)!;
    expect(of(numbers.candidates).vMedian).toBeCloseTo(of(candidates).vMedian!, 6);
    expect(of(numbers.candidates).gapMm).toBeCloseTo(of(candidates).gapMm!, 6);
    expect(of(numbers.candidates).cut).toBeNull();
    await drawn.getByRole('button', { name: 'Take it away' }).click();
    await expect.poll(() => page.locator('.candidate').count()).toBe(2);
    await page.getByRole('button', { name: 'Undo: Take a drawn board away' }).click();
    await drawn.waitFor();
    await page.getByText('Kept here').waitFor();
    await page.reload();
    await drawn.waitFor({ timeout: 60_000 });
    expect(errors).toEqual([]);
  }, 120_000);
});
