import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CompareResult } from '../../src/core/results/compareResult.js';
import type { ForecastResult } from '../../src/core/results/forecastResult.js';
import type { GapResult } from '../../src/core/results/gapResult.js';
import { runCliHere } from '../support/runCliHere.js';

const size = ['--size', '220mmx40mm'];
const photos = ['samples/board-1.jpg', 'samples/board-5.jpg'];
const run = async (...args: string[]) => {
  const { status, out } = await runCliHere(...args, '--json');
  return { status, document: JSON.parse(out) };
};
const compare = async (...args: string[]) => {
  const { status, document } = await run('compare', ...args, ...size);
  return { status, result: document as CompareResult, error: document };
};

describe('compare', () => {
  it('ranks every candidate by what a rip would show', async () => {
    const { status, result } = await compare(...photos);
    expect(status).toBe(0);
    expect(result.schema).toBe('seamgrain/compare@1');
    expect(result.candidates.map((c) => c.photo).sort()).toEqual(photos);
    expect(result.candidates.map((c) => c.rank)).toEqual([1, 2]);
    const [first, second] = result.candidates;
    expect(first!.vMedian!).toBeLessThanOrEqual(second!.vMedian!);
    for (const { vBest, vMedian, bestYMm, cut, gapMm, notes } of result.candidates) {
      expect(vBest!).toBeLessThanOrEqual(vMedian!);
      expect(bestYMm!).toBeGreaterThan(0);
      expect(bestYMm!).toBeLessThan(40);
      expect([cut, gapMm]).toEqual([null, null]);
      expect(notes.join(' ')).toMatch(/end grain.*species/);
    }
  });

  it('ranks by the place that forecast finds for the front, and says what decides', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'seamgrain-'));
    const front = ['--front', '90mmx12mm'];
    const { result } = await compare(...photos, ...front, '--out', folder);
    const { document } = await run('forecast', photos[0]!, ...size, ...front);
    const [best] = (document as ForecastResult).placements;
    const one = result.candidates.find(({ photo }) => photo === photos[0])!;
    expect(one.front).toMatchObject({ xMm: best!.xMm, yMm: best!.yMm, v: best!.v });
    const [first, second] = result.candidates;
    expect(first!.front!.v).toBeLessThanOrEqual(second!.front!.v);
    expect(second!.decides!.v).toBeCloseTo(second!.front!.v, 12);
    const page = readFileSync(join(folder, 'report.html'), 'utf8');
    expect(page).toContain('What decides');
    expect(page).not.toMatch(/(href|src)="(?!data:|#)/);
    rmSync(folder, { recursive: true });
  });

  it('says that a front does not fit, and still ranks the rips', async () => {
    const { status, result } = await compare(...photos, '--front', '90mmx60mm');
    expect(status).toBe(0);
    for (const { front, vMedian, notes } of result.candidates) {
      expect(front).toBeNull();
      expect(vMedian).not.toBeNull();
      expect(notes.join(' ')).toContain('too small');
    }
  });

  it('takes cut and gap from the end grain, as endgrain and gap tell them', async () => {
    const end = 'samples/end-grain.jpg';
    const season = ['--species', 'white oak', '--from', '35%@70F', '--to', '80%@70F'];
    const { result } = await compare(
      photos[0]!,
      ...['--end', `${photos[0]}=${end}`, '--end-size', '168mmx34mm'],
      ...[...season, '--across', '90mm'],
    );
    const read = await run('endgrain', end, '--size', '168mmx34mm');
    const [candidate] = result.candidates;
    expect(candidate!.cut).toEqual(read.document.cut);
    const gapOf = async (rings: string) => {
      const args = ['--across', '90mm', '--ring-angle', rings];
      return ((await run('gap', ...season, ...args)).document as GapResult).gapMm;
    };
    // Between the two extremes of the same wood, whatever the rings.
    expect(candidate!.gapMm!).toBeGreaterThan(await gapOf('90deg'));
    expect(candidate!.gapMm!).toBeLessThan(await gapOf('0deg'));
  });

  it('tells by the face alone how a board with a cathedral is sawn, within its error', async () => {
    // Strip 2 of the plank in samples/boardSamples.ts: 164 to 244 mm down, pith 75 mm behind 180 mm. Rings
    // of even circles stand at atan(|y - 180| / 75) to the face: below 30 deg over 59 of 80 mm.
    const whole = [photos[0]!, '--size', '440mmx80mm'];
    const { document } = await run('compare', ...whole);
    const { cut, cutFromFace } = (document as CompareResult).candidates[0]!;
    expect(cut).toBeNull();
    const { least, most, cut: shares } = cutFromFace!;
    expect(shares.flatsawn + shares.rift + shares.quartered).toBeCloseTo(1, 9);
    for (const name of ['flatsawn', 'rift', 'quartered'] as const) {
      expect(least[name]).toBeLessThanOrEqual(shares[name]);
      expect(shares[name]).toBeLessThanOrEqual(most[name]);
    }
    // Twice the error: one standard error covers two boards of three.
    expect(shares.flatsawn - 2 * (shares.flatsawn - least.flatsawn)).toBeLessThanOrEqual(59 / 80);
    expect((await runCliHere('compare', ...whole)).out).toContain('By its face about');
  });

  it('draws boards that are not there yet', async () => {
    const { result } = await compare('--imagine', 'quartered', '--imagine', 'flatsawn');
    expect(result.candidates.map(({ isImagined }) => isImagined)).toEqual([true, true]);
    expect(result.candidates[0]!.notes.join(' ')).toContain('wood model');
  });

  it('refuses what it cannot compare', async () => {
    for (const args of [
      [],
      [...photos, '--end', 'other.jpg=end.jpg', '--end-size', '8inx1in'],
      [...photos, '--end', `${photos[0]}=samples/end-grain.jpg`],
      [...photos, '--species', 'white oak', '--from', '35%@70F', '--to', '80%@70F'],
      [...photos, '--front', '90x12'],
    ]) {
      const { status, error } = await compare(...args);
      expect([args, status]).toEqual([args, 2]);
      expect(error.schema).toBe('seamgrain/error@1');
    }
  });
});
