import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCliHere } from '../support/runCliHere.js';

let folder = '';
let photo = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-usage-'));
  photo = join(folder, 'plain.png');
  const plain = { width: 200, height: 150, channels: 3, background: '#b08050' } as const;
  await writeFile(photo, await sharp({ create: plain }).png().toBuffer());
});
afterAll(() => rm(folder, { recursive: true }));

const size = ['--size', '200mmx150mm'];
/** `PHOTO` stands for a photo that is there. */
const wrong: [string, string[], RegExp][] = [
  ['no verb', [], /No verb/],
  ['an unknown verb', ['polish', 'PHOTO'], /unknown command 'polish'/],
  ['an unknown option', ['score', 'PHOTO', ...size, '--shine'], /unknown option '--shine'/],
  ['no photo', ['score', ...size], /missing required argument 'photo'/],
  ['two photos', ['score', 'PHOTO', 'PHOTO', ...size], /too many arguments/],
  ['no scale', ['score', 'PHOTO'], /no scale/],
  ['two scales', ['score', 'PHOTO', ...size, '--px-per-mm', '5'], /two scales/],
  [
    'corners without a size',
    ['score', 'PHOTO', '--px-per-mm', '5', '--corners', '0,0 9,0 9,9 0,9'],
    /--corners needs --size/,
  ],
  [
    'three corners',
    ['score', 'PHOTO', ...size, '--corners', '0,0 199,0 199,149'],
    /not four corners/,
  ],
  ['a size without units', ['score', 'PHOTO', '--size', '200x150'], /unit/],
  ['a size of zero', ['score', 'PHOTO', '--size', '0mmx150mm'], /area|zero/],
  ['a size with one length', ['score', 'PHOTO', '--size', '200mm'], /not a size/],
  ['px/mm with a unit', ['score', 'PHOTO', '--px-per-mm', '5mm'], /not a number/],
  ['px/mm below zero', ['score', 'PHOTO', '--px-per-mm', '-5'], /not a number above zero/],
  [
    'a known distance without length',
    ['score', 'PHOTO', '--known', '0,0 100,0'],
    /not a known distance/,
  ],
  ['a bare kerf', ['score', 'PHOTO', ...size, '--kerf', '3'], /no unit/],
  ['a kerf of a foot', ['score', 'PHOTO', ...size, '--kerf', '1ft'], /kerf/],
  ['a distance of a mile', ['score', 'PHOTO', ...size, '--distance', '1600m'], /looks at a panel/],
  ['half a seed', ['score', 'PHOTO', ...size, '--seed', '0.5'], /not a seed/],
  ['a seam without a place', ['score', 'PHOTO', ...size, '--seam', 'middle'], /not a seam/],
  ['a seam without units', ['score', 'PHOTO', ...size, '--seam', 'y=70'], /no unit/],
  [
    'an area of two corners',
    ['score', 'PHOTO', ...size, '--leave-out', '1mm,1mm 2mm,2mm'],
    /no area/,
  ],
  ['nothing to look for', ['score', 'PHOTO', ...size, '--no-find'], /nothing to score/],
  ['other units', ['score', 'PHOTO', ...size, '--units', 'cubits'], /Allowed choices are in, mm/],
];

describe('wrong usage', () => {
  it.each(wrong)('%s: status 2, said on stderr', async (_, args, message) => {
    const { status, out, err } = await runCliHere(...fill(args));
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(message);
    expect(err).not.toMatch(/\bat .*\.js/);
  });

  it.each(wrong)('%s, with --json: one error document on stdout', async (_, args, message) => {
    const run = await runCliHere(...fill(args), '--json');
    expect({ status: run.status, err: run.err }).toEqual({ status: 2, err: '' });
    expect(run.json()).toEqual({
      schema: 'seamgrain/error@1',
      code: expect.stringMatching(/^(wrongUsage|badLength)$/),
      message: expect.stringMatching(args.length ? message : /No verb|--json/),
      hint: expect.stringMatching(/./),
    });
  });

  function fill(args: string[]): string[] {
    return args.map((arg) => (arg === 'PHOTO' ? photo : arg));
  }
});

describe('help and version', () => {
  it('are answers, on stdout with status 0', async () => {
    const help = await runCliHere('--help');
    expect(help.status).toBe(0);
    expect(help.out).toMatch(/score/);
    expect((await runCliHere('score', '--help')).out).toMatch(/--px-per-mm/);
    expect(await runCliHere('--version')).toMatchObject({ status: 0, out: '0.1.0\n' });
  });
});

describe('a photo that cannot be used', () => {
  const odd: [string, () => Promise<Uint8Array | null>, RegExp][] = [
    ['missing', async () => null, /not found/],
    ['empty', async () => new Uint8Array(), /empty/],
    ['no photo', async () => Buffer.from('a shopping list '.repeat(9)), /not a photo/],
    ['cut short', async () => (await sharp(photo).png().toBuffer()).subarray(0, 300), /cut short/],
    ['one pixel wide', () => sharp(photo).resize(1, 150, { fit: 'fill' }).png().toBuffer(), /only/],
  ];
  it.each(odd)('%s: status 1, an error document, nothing written', async (name, make, message) => {
    const path = join(folder, `${name}.jpg`);
    const bytes = await make();
    if (bytes) await writeFile(path, bytes);
    const out = join(folder, 'out', name);
    const run = await runCliHere('score', path, '--px-per-mm', '1', '--json', '--out', out);
    expect(run.status).toBe(1);
    expect(run.json()).toMatchObject({ schema: 'seamgrain/error@1', code: 'badPhoto' });
    expect(run.json().message).toMatch(message);
    expect(await readdir(folder)).not.toContain('out');
  });

  it('whose corners cross: status 1, badPanel', async () => {
    const corners = ['--corners', '5,5 190,140 190,5 5,140'];
    const run = await runCliHere('score', photo, ...size, ...corners, '--json');
    expect(run.status).toBe(1);
    expect(run.json()).toMatchObject({ code: 'badPanel', message: expect.stringMatching(/cross/) });
  });

  it('shows where the failure came from only with --debug', async () => {
    const quiet = await runCliHere('score', 'none.jpg', ...size);
    const loud = await runCliHere('score', 'none.jpg', ...size, '--debug');
    expect(quiet.err).not.toMatch(/\.ts:\d+/);
    expect(loud.err).toMatch(/\.ts:\d+/);
  });
});
