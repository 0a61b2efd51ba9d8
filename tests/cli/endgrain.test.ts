import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import type { EndgrainResult } from '../../src/core/results/endgrainResult.js';
import { drawEndGrain } from '../../src/core/wood/drawEndGrain.js';
import { runCliHere } from '../support/runCliHere.js';

const folder = mkdtempSync(join(tmpdir(), 'endgrain-'));
const photo = join(folder, 'end.png');
const scale = ['--px-per-mm', '6'];

beforeAll(async () => {
  const board = {
    seed: 21,
    setting: 'softwood',
    widthMm: 70,
    thicknessMm: 22,
    pithYMm: 30,
    pithDepthMm: 55,
  } as const;
  const { image } = drawEndGrain({ board }, { pxPerMm: 6 });
  const { width, height, data } = image;
  await sharp(data, { raw: { width, height, channels: 3 } })
    .png()
    .toFile(photo);
});

describe('endgrain', () => {
  it('keeps the contract: shares sum to 1, angles at mid-thickness, units in mm', async () => {
    const { status, out } = await runCliHere('endgrain', photo, ...scale, '--json');
    expect(status).toBe(0);
    const result: EndgrainResult = JSON.parse(out);
    expect(result.schema).toBe('seamgrain/endgrain@1');
    const { flatsawn, rift, quartered } = result.cut!;
    expect(flatsawn + rift + quartered).toBeCloseTo(1, 9);
    expect(result.notes.join(' ')).toContain('Architectural Woodwork Standards');
    for (const { angleDeg } of result.ringAngle) {
      expect(angleDeg).toBeGreaterThanOrEqual(0);
      expect(angleDeg).toBeLessThanOrEqual(90);
    }
  });

  it('takes a tangent in photo pixels, also through corners', async () => {
    const line = ['--tangent', '60,40 120,40'];
    const plain = await runCliHere('endgrain', photo, ...scale, ...line, '--json');
    const flat: EndgrainResult = JSON.parse(plain.out);
    expect(flat.found).toBe('placed');
    expect(flat.cut).toEqual({ flatsawn: 1, rift: 0, quartered: 0 });
    // The corners named a quarter turn on: the photo's horizontal is then the end's vertical.
    const corners = ['--size', '22mmx70mm', '--corners', '420,0 420,132 0,132 0,0'];
    const turned = await runCliHere('endgrain', photo, ...corners, ...line, '--json');
    const upright: EndgrainResult = JSON.parse(turned.out);
    expect(upright.ringAngle[0]!.angleDeg).toBeCloseTo(90, 6);
  });

  it('takes a pith by hand', async () => {
    const { out } = await runCliHere('endgrain', photo, ...scale, '--pith', '210,660', '--json');
    const result: EndgrainResult = JSON.parse(out);
    expect(result.pith!.xMm).toBeCloseTo(35, 6);
    expect(result.pith!.yMm).toBeCloseTo(110, 6);
  });

  it('says how far it cups when the species is known', async () => {
    const { out } = await runCliHere('endgrain', photo, ...scale, '--species', 'oak', '--json');
    expect(JSON.parse(out).code).toBe('wrongUsage');
    const maple = await runCliHere(
      'endgrain',
      photo,
      ...scale,
      '--species',
      'hard maple',
      '--json',
    );
    const result: EndgrainResult = JSON.parse(maple.out);
    expect(result.cupping!.hollow).toBe('top');
    expect(result.cupping!.hollowMm).toBeGreaterThan(0);
  });

  it('writes the picture, the page and the numbers', async () => {
    const to = join(folder, 'out');
    const { status, out } = await runCliHere('endgrain', photo, ...scale, '--out', to);
    expect(status).toBe(0);
    expect(out).toContain('flatsawn');
    expect(readdirSync(to).sort()).toEqual(
      ['end.png', 'endgrain.json', 'endgrain.png', 'endgrain.svg', 'report.html'].sort(),
    );
    const page = readFileSync(join(to, 'report.html'), 'utf8');
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });
});
