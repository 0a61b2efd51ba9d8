import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { DryClampResult } from '../../src/core/results/dryClampResult.js';
import { drawJoint } from '../core/shop/joint/drawJoint.js';
import { runCliHere } from '../support/runCliHere.js';

const pxPerMm = 20;
let folder = '';
let photo = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'seamgrain-dryclamp-'));
  photo = join(folder, 'joint.png');
  const gapMm = (x: number) => 0.5 * ((x - 30) / 30) ** 2;
  const plane = drawJoint({ pxPerMm, lengthMm: 60, gapMm, seed: 4 });
  // Linear light to sRGB bytes, IEC 61966-2-1.
  const bytes = Buffer.from(
    plane.data.map((y) => 255 * (1.055 * Math.max(0, y) ** (1 / 2.4) - 0.055)),
  );
  const raw = { width: plane.width, height: plane.height, channels: 1 } as const;
  await writeFile(photo, await sharp(bytes, { raw }).png().toBuffer());
});
afterAll(() => rm(folder, { recursive: true }));

describe('dryclamp', () => {
  it('reads a convex joint from a photo and has the rail dressed', async () => {
    const joint = ['--joint', '0,200 1200,200', '--px-per-mm', String(pxPerMm)];
    const run = await runCliHere('dryclamp', photo, ...joint, '--rail-spare', '1mm', '--json');
    expect(run.status).toBe(0);
    const result = run.json() as unknown as DryClampResult;
    expect(result).toMatchObject({
      schema: 'seamgrain/dryClamp@1',
      verdict: 'dress',
      shape: 'convex',
      dress: { piece: 'rail', isEnough: true },
    });
  });

  it.each([
    ['no scale', ['--joint', '0,200 1200,200'], /no scale/],
    ['one end', ['--joint', '0,200', '--px-per-mm', '20'], /not two places/],
  ])('refuses %s, status 2', async (_, args, message) => {
    const run = await runCliHere('dryclamp', photo, ...args, '--json');
    expect(run.status).toBe(2);
    expect(run.json().message).toMatch(message);
  });

  it('refuses a joint at the edge of the photo, status 1', async () => {
    const joint = ['--joint', '0,1 1200,1', '--px-per-mm', '100'];
    const run = await runCliHere('dryclamp', photo, ...joint, '--json');
    expect(run.status).toBe(1);
  });
});
