import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Project } from '../../src/app/state/project.js';
import { drawnPanel } from './support/drawnPanel.js';
import { expectSameNumbers } from './support/expectSameNumbers.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';
import { runCli } from './support/runCli.js';
import { savedText } from './support/savedText.js';

let bench: Bench;
let page: Page;
let errors: string[];
let folder: string;
let photoPath: string;

const type = async (label: string, text: string) => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel(label, { exact: true }).press('Enter');
};

describe.skipIf(!browserOrSkip())('the forecast on the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    page = await (await bench.freshContext()).newPage();
    page.setDefaultTimeout(40_000);
    errors = watchErrors(page);
    // 4 px/mm: 800 x 400 px of panel are 200 x 100 mm.
    const { png } = await drawnPanel({ width: 1200, height: 700, lostPx: 0 });
    folder = await mkdtemp(join(tmpdir(), 'seamgrain-'));
    photoPath = join(folder, 'uncut.png');
    await writeFile(photoPath, png);
    await page.goto(bench.app.url);
    const file = { name: 'uncut.png', mimeType: 'image/png', buffer: png };
    await pinByHand(page, file, '200 mm', '100 mm');
    await page.getByRole('link', { name: 'Before the rip' }).click();
    await type('Front along the grain', '90 mm');
    await type('Front across the grain', '40 mm');
  });
  afterAll(async () => {
    await bench?.close();
    if (folder) await rm(folder, { recursive: true, force: true });
  });

  it('gives the numbers that the command line gives for the same pixels', async () => {
    const saved = JSON.parse(await savedText(page, 'Save as a file')) as { project: Project };
    const { scale } = saved.project.photos[0]!;
    if (scale?.kind !== 'size' || !scale.cornersPx) throw new Error('no corners');
    const corners = scale.cornersPx.map(({ x, y }) => `${x},${y}`).join(' ');
    const where = ['--size', '200mmx100mm', '--corners', corners];
    const wanted = await runCli('forecast', photoPath, ...where, '--front', '90mmx40mm');
    expectSameNumbers(JSON.parse(await savedText(page, 'Save the numbers')), wanted);
  });

  it('saves its report as one page that asks nothing of anyone', async () => {
    const html = await savedText(page, 'Save the report');
    expect(html).toMatch(/^<!doctype html>/);
    expect(html).toContain('data:image/jpeg;base64,');
    expect(html).not.toMatch(/(?:src|href)="(?!data:|#)/);
    expect(errors).toEqual([]);
  });
});
