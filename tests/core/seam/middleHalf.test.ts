import { describe, expect, it } from 'vitest';
import { middleHalf } from '../../../src/core/seam/middleHalf.js';

const steps = Array.from({ length: 161 }, (_, i) => -20 + 0.25 * i);
const weigh = (f: (x: number) => number) => Float64Array.from(steps, f);

describe('middleHalf', () => {
  it('is 0.9945 standard deviations of a normal distribution (tables: z = 0.99446 below 84 %)', () => {
    const normal = weigh((x) => Math.exp(-0.5 * ((x - 1.3) / 2) ** 2));
    expect(middleHalf(steps, normal) / 2).toBeCloseTo(0.99446, 2);
  });

  it('is 0.68 half widths of an even stretch', () => {
    const even = weigh((x) => (Math.abs(x) < 10.1 ? 1 : 0));
    expect(middleHalf(steps, even)).toBeCloseTo(0.34 * 81 * 0.25, 6);
  });

  it('takes no notice of a far tail that the spread doubles for', () => {
    const narrow = weigh((x) => Math.exp(-0.5 * (x / 0.8) ** 2));
    const tailed = narrow.map((w, i) => w + (Math.abs(steps[i]! - 18) < 0.2 ? 0.1 : 0));
    expect(middleHalf(steps, tailed) / middleHalf(steps, narrow)).toBeLessThan(1.1);
  });

  it('of one step alone is 0.68 of half a step', () => {
    const one = weigh((x) => (x === 0 ? 1 : 0));
    expect(middleHalf(steps, one)).toBeCloseTo(0.34 * 0.25, 9);
  });
});
