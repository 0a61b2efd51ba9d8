import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ForecastResult } from '../../src/core/results/forecastResult.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../src/core/wood/onePiecePanel.js';
import { runCliHere } from '../support/runCliHere.js';

let folder = '';
let photo = '';
const size = ['--size', '170mmx110mm'];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-forecast-'));
  photo = join(folder, 'uncut.png');
  const board = {
    seed: 21,
    setting: 'softwood',
    cut: 'flatsawn',
    lengthMm: 170,
    widthMm: 110,
  } as const;
  const { image } = drawPanel(onePiecePanel({ board, widthMm: 170, heightMm: 110 }), {
    pxPerMm: 5,
  });
  const { width, height, data } = image;
  await writeFile(
    photo,
    await sharp(data, { raw: { width, height, channels: 3 } })
      .png()
      .toBuffer(),
  );
});
afterAll(() => rm(folder, { recursive: true }));

async function forecast(...args: string[]): Promise<ForecastResult> {
  const { status, json, out } = await runCliHere('forecast', photo, ...size, ...args, '--json');
  expect(status, out.slice(0, 300)).toBe(0);
  return json() as unknown as ForecastResult;
}

describe('forecast --json', () => {
  it('keeps the contract for rips', async () => {
    const result = await forecast('--rip', '50mm', '--rip', '3in', '--dress', '1/64in');
    expect(result.schema).toBe('seamgrain/forecast@1');
    expect(result.panel.widthMm).toBe(170);
    expect(result.kerfMm).toBeCloseTo(3.175, 9);
    expect(result.dressMm).toBeCloseTo(25.4 / 64, 9);
    expect(result.rips.map(({ yMm }) => yMm)).toEqual([50, 76.2]);
    for (const rip of result.rips) {
      expect(Object.keys(rip)).toEqual(
        expect.arrayContaining([
          'yMm',
          'visibility',
          'vByAngle',
          'bestSlideMm',
          'vAtBestSlide',
          'windows',
        ]),
      );
      expect(Math.abs(rip.bestSlideMm ?? 99)).toBeLessThanOrEqual(25.4);
    }
    const steps = result.curve.slice(1).map(({ yMm }, i) => yMm - (result.curve[i]?.yMm ?? 0));
    for (const step of steps) expect(step).toBeCloseTo(2, 9);
    expect(result.placements).toEqual([]);
  });

  it('gives a rip the cost that the curve has at the same place', async () => {
    const grid = await forecast();
    const yMm = grid.curve[20]?.yMm;
    const { rips, curve } = await forecast('--rip', `${yMm}mm`);
    const point = curve.find((one) => one.yMm === yMm);
    expect(rips[0]?.visibility.v).toBeCloseTo(point?.v ?? -1, 6);
    expect(rips[0]?.vByAngle).toBeCloseTo(point?.vByAngle ?? -1, 6);
  });

  it('places a front within its box', async () => {
    const box = ['--within', '20mm,20mm 140mm,90mm', '--margin', '8mm'];
    const { placements, search } = await forecast('--front', '80mmx45mm', ...box);
    expect(search?.tried).toBeGreaterThan(100);
    for (const place of placements) {
      expect(place.xMm).toBeGreaterThanOrEqual(20);
      expect(place.xMm + place.widthMm).toBeLessThanOrEqual(140);
      expect(place.yMm + place.heightMm).toBeLessThanOrEqual(90);
      expect(Object.keys(place.slides).sort()).toEqual(['left', 'lower', 'right', 'upper']);
      expect(place.v).toBeCloseTo(Math.cbrt(place.cost), 9);
    }
    expect(placements.map(({ rank }) => rank)).toEqual(placements.map((_, i) => i + 1));
  });
});

describe('forecast --out', () => {
  it('writes the re-glued face at the working scale', async () => {
    const out = join(folder, 'out');
    await forecast('--front', '80mmx45mm', '--out', out);
    expect((await readdir(out)).sort()).toEqual([
      'forecast.json',
      'forecast.png',
      'forecast.svg',
      'panel.png',
      'reglued-marked.png',
      'reglued.png',
      'report.html',
    ]);
    const { width, height } = await sharp(join(out, 'reglued.png')).metadata();
    // Ends stay, two kerfs of the width gone: 170 x (110 - 6.35) mm at 5 px/mm.
    expect([width, height]).toEqual([850, Math.round(5 * (110 - 6.35))]);
    const page = await readFile(join(out, 'report.html'), 'utf8');
    expect(page).not.toMatch(/(src|href)="(?!data:|#)/);
  });
});

describe('forecast of a photo without grain', () => {
  it('tells nothing instead of saying that all disappears', async () => {
    const plain = join(folder, 'plain.png');
    const create = { width: 600, height: 450, channels: 3, background: '#b08050' } as const;
    await writeFile(plain, await sharp({ create }).png().toBuffer());
    const args = [
      'forecast',
      plain,
      '--size',
      '100mmx75mm',
      '--rip',
      '30mm',
      '--front',
      '40mmx20mm',
    ];
    const result = (await runCliHere(...args, '--json')).json() as unknown as ForecastResult;
    expect(result.rips[0]?.visibility.v).toBeNull();
    expect(result.placements).toEqual([]);
    expect(result.notes.join(' ')).toMatch(/almost no grain/);
    const out = join(folder, 'plain-out');
    const { status, out: words } = await runCliHere(...args, '--out', out);
    expect(status).toBe(0);
    expect(words).not.toContain('disappear');
    expect(await readdir(out)).toContain('report.html');
  });
});

describe('forecast in words', () => {
  it('answers in a sentence', async () => {
    const { status, out } = await runCliHere('forecast', photo, ...size, '--front', '80mmx45mm');
    expect(status).toBe(0);
    expect(out.split('\n')[0]).toMatch(
      /^Take the front .+ in from the left, .+ in from the top: .+\.$/,
    );
  });

  it('draws a face when there is no photo', async () => {
    const args = ['--imagine', 'quartered', '--size', '120mmx80mm', '--wood', 'softwood'];
    const { status, out } = await runCliHere('forecast', ...args);
    expect(status).toBe(0);
    expect(out).toContain('Drawn by the wood model');
  });
});

describe('forecast refuses', () => {
  it.each([
    ['no photo', [], 2, /nothing to forecast/],
    ['a rip off the panel', ['PHOTO', ...size, '--rip', '109mm'], 1, /leaves no wood/],
    ['two rips in one place', ['PHOTO', ...size, '--rip', '50mm', '--rip', '52mm'], 1, /no strip/],
    ['a front too large', ['PHOTO', ...size, '--front', '80mmx105mm'], 1, /too small/],
    ['a rip without unit', ['PHOTO', ...size, '--rip', '50'], 2, /unit/],
    ['other ends', ['PHOTO', ...size, '--ends', 'float'], 2, /stay, close/],
    ['a box without size', ['PHOTO', ...size, '--within', '1mm,1mm 1mm,9mm'], 2, /no box/],
    ['a ring of an inch', ['PHOTO', ...size, '--ring-width', '1in'], 2, /year ring/],
    ['no place', ['PHOTO', ...size, '--places', '0'], 2, /number of places/],
  ] as const)('%s', async (_, args, status, message) => {
    const given = args.map((arg) => (arg === 'PHOTO' ? photo : arg));
    const answer = await runCliHere('forecast', ...given, '--json');
    expect(answer.status).toBe(status);
    expect(answer.json().schema).toBe('seamgrain/error@1');
    expect(String(answer.json().message)).toMatch(message);
  });
});
