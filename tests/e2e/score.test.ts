import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ellipseOutline } from '../../src/app/geometry/ellipseOutline.js';
import type { Project } from '../../src/app/state/project.js';
import type { ScoreResult } from '../../src/core/results/scoreResult.js';
import { type DrawnPanel, drawnPanel } from './support/drawnPanel.js';
import { expectSameNumbers } from './support/expectSameNumbers.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';
import { runCli } from './support/runCli.js';
import { savedText } from './support/savedText.js';

let bench: Bench;
let drawn: DrawnPanel;
let folder: string;
let photoPath: string;

// The drawn panel is 4 px/mm: 1000 x 600 px of it are 250 x 150 mm.
const lengthMm = 250;
const widthMm = 150;

const scored = (page: Page) => page.locator('h1.answer[aria-busy=false]').waitFor();
const numbers = async (page: Page) =>
  JSON.parse(await savedText(page, 'Save the numbers')) as ScoreResult;

async function openDrawn(page: Page): Promise<void> {
  await page.goto(bench.app.url);
  const file = { name: 'drawn.png', mimeType: 'image/png', buffer: drawn.png };
  await pinByHand(page, file, `${lengthMm} mm`, `${widthMm} mm`);
  await scored(page);
}

/** Only what is placed by hand is scored: finding takes most of the time. */
async function stopFinding(page: Page): Promise<void> {
  await page.getByLabel('look for joints in the photo').uncheck();
}

/** What the page was told by hand, as the command line is told it. */
async function wordsOf(page: Page): Promise<string[]> {
  const file = JSON.parse(await savedText(page, 'Save as a file')) as { project: Project };
  const { scale, seams, leftOut, findSeams } = file.project.photos[0]!;
  if (scale?.kind !== 'size' || !scale.cornersPx) throw new Error('no corners');
  const areas = leftOut.flatMap(({ xMm, yMm, radiusXMm, radiusYMm }) => [
    '--leave-out',
    ellipseOutline(xMm, yMm, radiusXMm, radiusYMm)
      .map(([x, y]) => `${x}mm,${y}mm`)
      .join(' '),
  ]);
  const corners = scale.cornersPx.map(({ x, y }) => `${x},${y}`).join(' ');
  const placed = seams.flatMap(({ line: { x1Mm, y1Mm, x2Mm, y2Mm } }) => [
    '--seam',
    `${x1Mm}mm,${y1Mm}mm ${x2Mm}mm,${y2Mm}mm`,
  ]);
  const { distanceMm } = file.project.settings;
  return [
    '--size',
    `${lengthMm}mmx${widthMm}mm`,
    '--corners',
    corners,
    '--distance',
    `${distanceMm}mm`,
    ...(findSeams ? [] : ['--no-find']),
    ...placed,
    ...areas,
  ];
}

/** Taps the panel at a place given in its own millimetres, at the whole view. */
async function tapPanel(page: Page, xMm: number, yMm: number): Promise<void> {
  const panel = page.getByRole('application');
  await panel.evaluate((element) => element.scrollIntoView({ block: 'start' }));
  const box = (await panel.boundingBox())!;
  const scale = Math.min(box.width / lengthMm, box.height / widthMm);
  const left = box.x + (box.width - lengthMm * scale) / 2;
  const top = box.y + (box.height - widthMm * scale) / 2;
  await page.mouse.click(left + xMm * scale, top + yMm * scale);
}

describe.skipIf(!browserOrSkip())('scoring on the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    drawn = await drawnPanel({ width: 1400, height: 900 });
    folder = await mkdtemp(join(tmpdir(), 'seamgrain-'));
    photoPath = join(folder, 'drawn.png');
    await writeFile(photoPath, drawn.png);
  });
  afterAll(async () => {
    await bench?.close();
    if (folder) await rm(folder, { recursive: true, force: true });
  });

  it('opens a sample in one tap and says what it sees', async () => {
    const page = await (await bench.freshContext()).newPage();
    const errors = watchErrors(page);
    await page.goto(bench.app.url);
    await page.getByRole('button', { name: /Three boards/ }).click();
    await page.locator('h1.answer[aria-busy=false]').waitFor({ timeout: 30_000 });
    expect(await page.locator('h1').textContent()).toMatch(/joint|crosscut/i);
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('gives the numbers that the command line gives for the same pixels', async () => {
    const page = await (await bench.freshContext()).newPage();
    await openDrawn(page);
    const shown = await numbers(page);
    const wanted = (await runCli('score', photoPath, ...(await wordsOf(page)))) as ScoreResult;
    expect(wanted.panel.pxPerMm).toBeGreaterThan(3.9);
    expectSameNumbers(shown, wanted);
    await page.context().close();
  });

  it('scores a joint placed by hand like the command line, there and from farther away', async () => {
    const page = await (await bench.freshContext()).newPage();
    await openDrawn(page);
    await stopFinding(page);
    await page.getByRole('button', { name: 'Place a joint along' }).click();
    await page.getByRole('application').press('Enter');
    await scored(page);
    const shown = await numbers(page);
    const placed = shown.seams.find(({ found }) => found === 'placed')!;
    expect(placed.line.y1Mm).toBeCloseTo(75, 6);
    await page.getByRole('button', { name: 'Leave a knot out' }).click();
    await tapPanel(page, 60, 75);
    await page.locator('h1.answer[aria-busy=true]').waitFor();
    await scored(page);
    const without = await numbers(page);
    expect(without.seams[0]!.windows.length).toBeLessThan(shown.seams[0]!.windows.length);
    expectSameNumbers(without, await runCli('score', photoPath, ...(await wordsOf(page))));

    const slider = page.getByRole('slider', { name: /Seen from/ });
    await slider.focus();
    for (let step = 0; step < 12; step++) await page.keyboard.press('ArrowRight');
    await page.locator('h1.answer[aria-busy=true]').waitFor();
    await scored(page);
    const farther = await numbers(page);
    expect(farther.seams[0]!.windows.length).toBeLessThan(shown.seams[0]!.windows.length);
    expectSameNumbers(farther, await runCli('score', photoPath, ...(await wordsOf(page))));
    await page.context().close();
  });

  it('takes a placed joint back by undo, moves it by keys, and removes it', async () => {
    const page = await (await bench.freshContext()).newPage();
    await openDrawn(page);
    await stopFinding(page);
    await scored(page);
    const before = await numbers(page);
    await page.getByRole('button', { name: 'Place a crosscut' }).click();
    await tapPanel(page, 80, 60);
    await scored(page);
    expect((await numbers(page)).seams).toHaveLength(before.seams.length + 1);
    await page.keyboard.press('Control+z');
    await scored(page);
    expectSameNumbers(await numbers(page), before);
    await page.keyboard.press('Control+Shift+z');
    await scored(page);

    const row = page.getByRole('listitem').filter({ hasText: 'placed by hand' });
    await row.locator('summary').click();
    await row.getByRole('button', { name: 'Move its ends' }).click();
    const end = page.getByRole('button', { name: /First end of the joint/ });
    const lineOf = (score: ScoreResult) =>
      score.seams.find(({ found }) => found === 'placed')!.line;
    const from = lineOf(await numbers(page)).x1Mm;
    await end.focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.getByRole('button', { name: 'Look' }).focus();
    await page.locator('h1.answer[aria-busy=true]').waitFor();
    await scored(page);
    expect(lineOf(await numbers(page)).x1Mm).toBeCloseTo(from + 5, 6);

    await row.getByRole('button', { name: 'Remove it' }).click();
    await scored(page);
    expectSameNumbers(await numbers(page), before);
    await page.context().close();
  });

  it('says why a joint placed at the very edge cannot be measured, and undo mends it', async () => {
    const page = await (await bench.freshContext()).newPage();
    await openDrawn(page);
    await page.getByRole('button', { name: 'Place a joint along' }).click();
    await tapPanel(page, 100, 2);
    await page.getByText("runs along the panel's edge").waitFor();
    await page.getByRole('button', { name: 'Undo: Place a seam' }).click();
    await scored(page);
    await page.context().close();
  });
});
