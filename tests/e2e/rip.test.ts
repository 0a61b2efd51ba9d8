import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';

let bench: Bench;
let page: Page;
let errors: string[];

const judged = () => page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 30_000 });
const words = () => page.locator('.segments').textContent();

/** Drags the front in a loop for 2.5 s and counts the answers in a second. */
const answersPerSecond = () =>
  page.locator('.front-handle').evaluate(async (handle) => {
    const box = handle.getBoundingClientRect();
    const at = (x: number, y: number) => ({
      pointerId: 1,
      bubbles: true,
      clientX: box.left + box.width / 2 + x,
      clientY: box.top + box.height / 2 + y,
      buttons: 1,
    });
    handle.setPointerCapture = () => {};
    handle.dispatchEvent(new PointerEvent('pointerdown', at(0, 0)));
    performance.clearMarks('front judged');
    const start = performance.now();
    while (performance.now() - start < 2500) {
      const t = (performance.now() - start) / 1000;
      handle.dispatchEvent(
        new PointerEvent('pointermove', at(40 * Math.sin(t), 50 * Math.sin(2 * t))),
      );
      await new Promise((resolve) => setTimeout(resolve, 16));
    }
    const seconds = (performance.now() - start) / 1000;
    const answers = performance.getEntriesByName('front judged').length;
    handle.dispatchEvent(new PointerEvent('pointerup', at(0, 0)));
    return answers / seconds;
  });

describe.skipIf(!browserOrSkip())('before the rip', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.locator('button.card').filter({ hasText: 'Maple, before the rip' }).click();
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 30_000 });
    await page.locator('.rail svg path').first().waitFor({ state: 'attached', timeout: 30_000 });
  });
  afterAll(() => bench?.close());

  it('says what the front costs where it lies, joint by joint', async () => {
    expect(await page.locator('h1').textContent()).toMatch(/^With the front here/);
    expect(await page.locator('.segments li').count()).toBe(8);
  });

  it('answers a dragged front at least ten times a second, and exactly once it rests', async () => {
    // Another test file may hold the processor for a moment: the best of three drags counts.
    let best = 0;
    for (let drag = 0; drag < 3 && best <= 10; drag++) {
      best = Math.max(best, await answersPerSecond());
      console.log(`answers a second while dragging, best so far: ${best.toFixed(1)}`);
    }
    expect(best).toBeGreaterThan(10);
    await judged();
    const atRest = await words();
    await page.reload();
    await judged();
    expect(await words()).toBe(atRest);
  });

  it('finds the best places and puts the front there, which undo takes back', async () => {
    const top = page.getByLabel('Front from the top');
    const before = await top.inputValue();
    await page.getByRole('button', { name: 'Find the best places' }).click();
    const first = page.getByRole('button', { name: 'Put it here: place 1' });
    await first.waitFor({ timeout: 40_000 });
    const promised = /(?:worst: |every joint )([^.]+)\./.exec(
      (await page.locator('.place').first().textContent())!,
    )![1]!;
    await first.click();
    await judged();
    const found = await page.locator('.segments strong').allTextContents();
    const scale = ['disappears', 'only if told', 'if you look for it', 'shows', 'jumps out'];
    const worst = Math.max(...found.map((word) => scale.indexOf(word)));
    expect(scale[worst]).toBe(promised);
    await page.getByRole('button', { name: 'Undo: Move the front' }).click();
    expect(await top.inputValue()).toBe(before);
  });

  it('moves by keys, and a wider kerf is judged anew', async () => {
    const top = page.getByLabel('Front from the top');
    const before = await top.inputValue();
    await page.locator('.front-handle').focus();
    await page.keyboard.press('Shift+ArrowDown');
    expect(await top.inputValue()).not.toBe(before);
    const calm = await page.locator('.rail svg').innerHTML();
    await page.getByLabel('Kerf of this saw').fill('1/4');
    await page.getByLabel('Kerf of this saw').press('Enter');
    await expect
      .poll(() => page.locator('.rail svg').innerHTML(), { timeout: 15_000 })
      .not.toBe(calm);
    expect(errors).toEqual([]);
  });
});
