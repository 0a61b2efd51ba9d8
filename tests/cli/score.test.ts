import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ScoreResult } from '../../src/core/results/scoreResult.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { runCliHere } from '../support/runCliHere.js';

const pxPerMm = 5;
const widthMm = 240;
const heightMm = 120;
const seamYMm = 62;
const size = ['--size', `${widthMm}mmx${heightMm}mm`];

let folder = '';
let photo = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-score-'));
  photo = join(folder, 'panel.jpg');
  const spec = ripPanel({
    board: { seed: 77, setting: 'ring-porous', cut: 'flatsawn' },
    widthMm,
    heightMm,
    cuts: [{ atMm: seamYMm, lostMm: 3.175, glueWidthMm: 0.2, glueContrast: 0.3 }],
  });
  const { image } = drawPanel(spec, { pxPerMm });
  const raw = { width: image.width, height: image.height, channels: 3 } as const;
  await writeFile(photo, await sharp(image.data, { raw }).jpeg({ quality: 92 }).toBuffer());
});
afterAll(() => rm(folder, { recursive: true }));

const score = (...more: string[]) => runCliHere('score', photo, ...size, ...more);

describe('score', () => {
  it('answers a person with a sentence', async () => {
    const { status, out, err } = await score();
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/^(One|Two|No) .*\./);
    expect(out).not.toMatch(/[{}]/);
  });

  it('prints one JSON document in the contract, and the same one again', async () => {
    const first = await score('--json');
    expect(first.status).toBe(0);
    expect(first.out.trim().split('\n')).toHaveLength(1);
    expect(first.json()).toMatchObject({
      schema: 'seamgrain/score@1',
      panel: { widthMm, heightMm, pxPerMm },
      seams: expect.any(Array),
      visibility: expect.any(Object),
      notes: expect.any(Array),
    });
    expect((await score('--json')).out).toBe(first.out);
  });

  it('scores a seam placed by hand, with or without looking for more', async () => {
    const placed = ['--seam', `y=${seamYMm}mm`, '--no-find', '--json'];
    const result = (await score(...placed)).json() as unknown as ScoreResult;
    expect(result.seams).toHaveLength(1);
    expect(result.seams[0]).toMatchObject({
      found: 'placed',
      p: null,
      line: { x1Mm: 0, y1Mm: seamYMm, x2Mm: widthMm, y2Mm: seamYMm },
    });
    const ends = ['--seam', `0mm,${seamYMm}mm ${widthMm}mm,${seamYMm}mm`, '--no-find', '--json'];
    expect((await score(...ends)).out).toBe((await score(...placed)).out);
  });

  it('writes panel, picture, page and numbers, and names them', async () => {
    const out = join(folder, 'deep', 'out');
    const { status, out: said } = await score(
      '--seam',
      `y=${seamYMm}mm`,
      '--no-find',
      '--out',
      out,
    );
    expect(status).toBe(0);
    const names = ['panel.png', 'report.html', 'score.json', 'score.png', 'score.svg'];
    expect((await readdir(out)).sort()).toEqual(names);
    for (const name of names) expect(said).toContain(join(out, name));
    const panel = await sharp(join(out, 'panel.png')).metadata();
    expect(panel).toMatchObject({ width: widthMm * pxPerMm, height: heightMm * pxPerMm });
    expect((await sharp(join(out, 'score.png')).metadata()).width).toBeGreaterThan(1000);
    const page = await readFile(join(out, 'report.html'), 'utf8');
    expect(page).not.toMatch(/(?:src|href)="(?!data:|#)/);
    const numbers = JSON.parse(await readFile(join(out, 'score.json'), 'utf8')) as ScoreResult;
    expect(numbers.schema).toBe('seamgrain/score@1');
  });

  it('with --json and --out still prints nothing but the document', async () => {
    const run = await score(
      '--seam',
      `y=${seamYMm}mm`,
      '--no-find',
      '--json',
      '--out',
      join(folder, 'o'),
    );
    expect(run.out.trim().split('\n')).toHaveLength(1);
    expect(run.json().schema).toBe('seamgrain/score@1');
  });

  it('writes lengths in inches by default and in millimetres when asked', async () => {
    const placed = ['--seam', `y=${seamYMm}mm`, '--no-find'];
    expect((await score(...placed)).out).toMatch(/ in\b/);
    expect((await score(...placed, '--units', 'mm')).out).toMatch(/\d mm\b/);
  });

  it.each([
    ['outside the panel', 'y=500mm'],
    ['of no length', '10mm,10mm 10mm,10mm'],
  ])('refuses a seam %s', async (_, seam) => {
    const run = await score('--seam', seam, '--json');
    expect(run.status).toBe(1);
    expect(run.json()).toMatchObject({ schema: 'seamgrain/error@1', code: 'badPanel' });
  });
});

describe('score of what is no joint', () => {
  it('says so of a plain surface, without an error', async () => {
    const plain = join(folder, 'plain.png');
    const create = { width: 600, height: 400, channels: 3, background: '#b58a5c' } as const;
    await writeFile(plain, await sharp({ create }).png().toBuffer());
    const run = await runCliHere('score', plain, '--px-per-mm', '5', '--json');
    expect(run.status).toBe(0);
    const result = run.json() as unknown as ScoreResult;
    expect(result.seams).toEqual([]);
    expect(result.visibility).toEqual({ v: null, word: null });
    expect(result.notes.join(' ')).toMatch(/grain|wood/i);
  });

  it('warns of a blurred photo', async () => {
    const blurred = join(folder, 'blurred.jpg');
    await writeFile(blurred, await sharp(photo).blur(5).jpeg({ quality: 92 }).toBuffer());
    const run = await runCliHere('score', blurred, ...size, '--json');
    expect(run.status).toBe(0);
    expect(String(run.json().notes)).toMatch(/blurred/);
  });
});
