import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { GapResult } from '../../src/core/results/gapResult.js';
import type { LayoutResult } from '../../src/core/results/layoutResult.js';
import { runCliHere } from '../support/runCliHere.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-shop-'));
});
afterAll(() => rm(folder, { recursive: true }));

const chest = ['layout', '--panel', '36inx20in', '--front', '14inx4in', '--at', '11in,8in'];
const maple = ['--across', '4in', '--species', 'hard maple', '--ring-angle', 'flatsawn'];

describe('layout', () => {
  it('prints the contract’s document', async () => {
    const run = await runCliHere(...chest, '--kerf', '1/8in', '--json');
    expect({ status: run.status, err: run.err }).toEqual({ status: 0, err: '' });
    const layout = run.json() as unknown as LayoutResult;
    expect(layout.schema).toBe('seamgrain/layout@1');
    // Two 1/8 in kerfs need 1/4 in [common practice, no published source].
    expect(layout.needs).toEqual({ widthMm: 107.95, lengthMm: 361.95 });
    expect(layout.cuts.map(({ n, kind, toBlade }) => [n, kind, toBlade])).toEqual([
      [1, 'rip', 'near'],
      [2, 'rip', 'far'],
      [3, 'crosscut', 'near'],
      [4, 'crosscut', 'far'],
    ]);
    for (const cut of layout.cuts) {
      expect(cut).toMatchObject({
        reference: expect.any(String),
        fenceMm: expect.any(Number),
        keeps: expect.any(String),
        note: expect.any(String),
      });
    }
    expect(layout.cautions.every((text) => typeof text === 'string')).toBe(true);
    expect(layout.notes.every((text) => typeof text === 'string')).toBe(true);
  });

  it('says by how much a panel is too small, status 1', async () => {
    const args = ['layout', '--panel', '13inx4in', '--front', '14inx4in', '--at', '0in,0in'];
    const run = await runCliHere(...args, '--json');
    expect(run.status).toBe(1);
    expect(run.json()).toMatchObject({
      schema: 'seamgrain/error@1',
      code: 'cannotDo',
      message: expect.stringMatching(
        /1\/4 in \(6.4 mm\) too narrow.*1 1\/4 in \(31.8 mm\) too short/,
      ),
    });
  });

  it('warns on stderr when the saw is not safe for it', async () => {
    const args = ['layout', '--panel', '10inx12in', '--front', '6inx3in', '--json'];
    const run = await runCliHere(...args);
    expect(run.status).toBe(0);
    expect(run.err).toMatch(/Not safe on the saw/);
    expect((run.json() as unknown as LayoutResult).safety.canBeCut).toBe(false);
  });

  it('lays banks, follows measured pieces, takes the maker’s rule', async () => {
    const bank = ['--panel', '40inx30in', '--front', '20inx5in', '--at', '10in,3in'];
    const run = await runCliHere(
      'layout',
      ...bank,
      ...['--column', '3', '--between', '3/4in', '--rule', '0.5mm', '--dress', '1/64in'],
      ...['--as-cut', 'strip 2=5 1/32in,5in', '--as-cut', 'front 1=x20in', '--json'],
    );
    expect(run.status).toBe(0);
    const layout = run.json() as unknown as LayoutResult & { asCut: { schema: string } };
    expect(layout.openings.length).toBe(3);
    expect(layout.cuts[0]!.setting.text).toMatch(/ mm$/);
    expect(layout.asCut.schema).toBe('seamgrain/asCut@1');
  });

  it('writes the sheet for paper and screen with the photograph on it', async () => {
    const photo = join(folder, 'panel.jpg');
    const plain = { width: 720, height: 400, channels: 3, background: '#c09060' } as const;
    await writeFile(photo, await sharp({ create: plain }).jpeg().toBuffer());
    const out = join(folder, 'out');
    const gap = ['--species', 'walnut', '--from', '40%@68F', '--to', '65%@72F'];
    const run = await runCliHere(...chest, ...gap, '--photo', photo, '--out', out);
    expect(run.status).toBe(0);
    expect(run.out).toMatch(/Cut 1: .*\n.*12 in from the fence to the near side/);
    expect((await readdir(out)).sort()).toEqual([
      'gap.json',
      'layout.csv',
      'layout.json',
      'sheet.html',
      'sheet.pdf',
      'sheet.svg',
    ]);
    const pdf = await readFile(join(out, 'sheet.pdf'), 'latin1');
    expect(pdf.slice(0, 8)).toBe('%PDF-1.4');
    expect(pdf).toMatch(/DCTDecode/);
  });

  it.each([
    ['no panel', ['layout', '--front', '14inx4in'], /--panel/],
    ['no front', ['layout', '--panel', '36inx20in'], /--front/],
    ['two places for one front', [...chest, '--at', '1in,1in'], /2 places/],
    ['a bare place', [...chest.slice(0, 5), '--at', '11,8'], /no unit/],
    ['a rule of thumb', [...chest, '--rule', '1/3in'], /step of a rule/],
    ['one thickness', [...chest, '--thickness', '1in'], /one thickness/],
    ['a piece that is not there', [...chest, '--as-cut', 'leg=2in'], /no 'leg'/],
    ['too many fronts', [...chest, '--column', '50'], /number of fronts/],
  ])('refuses %s, status 2', async (_, args, message) => {
    const run = await runCliHere(...args, '--json');
    expect(run.status).toBe(2);
    expect(run.json().message).toMatch(message);
  });
});

describe('gap', () => {
  it('prints the contract’s document', async () => {
    const run = await runCliHere('gap', ...maple, '--from', '35%@70F', '--to', '80%@70F', '--json');
    expect({ status: run.status, err: run.err }).toEqual({ status: 0, err: '' });
    const gap = run.json() as unknown as GapResult;
    expect(gap).toMatchObject({
      schema: 'seamgrain/gap@1',
      species: expect.stringMatching(/maple/),
      equation: expect.any(String),
      source: expect.stringMatching(/Wood Handbook/),
      notes: expect.any(Array),
    });
    // trade.md 1.9 [C]: 6.9 to 16.0 %, 0.128 in; by Eq. (13-3) a hundredth more.
    expect(gap.mcFrom).toBeCloseTo(6.9, 1);
    expect(gap.mcTo).toBeCloseTo(16.0, 1);
    expect(Math.abs(gap.gapMm / 25.4 - 0.128)).toBeLessThan(0.002);
  });

  it('takes moisture contents, months, a solid surround and own shrinkage', async () => {
    const mc = ['--mc-from', '12%', '--mc-to', '8%'];
    const oak = ['gap', '--across', '100mm', '--species', 'white oak', '--ring-angle', '90deg'];
    const dry = (await runCliHere(...oak, ...mc, '--json')).json();
    // Wood Handbook Table 13-5 [L], white oak, commercial: C_R .00180; 100 x .0018 x 4.
    expect(dry).toMatchObject({ coefficient: 0.0018, changeMm: -0.72, gapMm: 0.72 });
    const months = '35%@68F 40%@70F 70%@75F';
    const year = await runCliHere('gap', ...maple, '--mc-from', '8%', '--months', months, '--json');
    expect((year.json() as unknown as GapResult).months?.length).toBe(3);
    const own = ['gap', '--across', '10cm', '--shrinkage', '4.8%,9.9%', '--surround', 'same'];
    expect((await runCliHere(...own, ...mc, '--json')).status).toBe(0);
  });

  it.each([
    ['no species', ['gap', '--across', '4in', '--mc-from', '8%', '--mc-to', '9%'], /--species/],
    [
      'a vague species',
      ['gap', '--across', '4in', '--species', 'maple', '--mc-from', '8%', '--mc-to', '9%'],
      /several/,
    ],
    ['no state', ['gap', ...maple], /--from/],
    ['one state', ['gap', ...maple, '--from', '35%@70F'], /--to/],
    ['air and moisture', ['gap', ...maple, '--from', '35%@70F', '--mc-from', '8%'], /both/],
    ['a bare size', ['gap', '--across', '4', '--species', 'walnut'], /no unit/],
    ['a ring angle of 100', ['gap', ...maple.slice(0, 4), '--ring-angle', '100deg'], /ring angle/],
    ['air without a scale', ['gap', ...maple, '--from', '35%@70'], /temperature/],
  ])('refuses %s, status 2', async (_, args, message) => {
    const run = await runCliHere(...args, '--json');
    expect(run.status).toBe(2);
    expect(run.json().message).toMatch(message);
  });
});
