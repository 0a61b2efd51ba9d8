import { describe, expect, it } from 'vitest';
import type { CompareResult } from '../../src/core/results/compareResult.js';
import { runCliHere } from '../support/runCliHere.js';

const size = ['--size', '440mmx80mm'];

describe('compare', () => {
  it('ranks every candidate by what a rip would show', async () => {
    const photos = ['samples/board-1.jpg', 'samples/board-5.jpg'];
    const { status, out } = await runCliHere('compare', ...photos, ...size, '--json');
    const result: CompareResult = JSON.parse(out);
    expect(status).toBe(0);
    expect(result.schema).toBe('seamgrain/compare@1');
    expect(result.candidates.map((c) => c.photo).sort()).toEqual(photos);
    expect(result.candidates.map((c) => c.rank)).toEqual([1, 2]);
    const [first, second] = result.candidates;
    expect(first!.vMedian!).toBeLessThanOrEqual(second!.vMedian!);
    for (const { vBest, vMedian, bestYMm } of result.candidates) {
      expect(vBest!).toBeLessThanOrEqual(vMedian!);
      expect(bestYMm!).toBeGreaterThan(0);
      expect(bestYMm!).toBeLessThan(80);
    }
  });
});
