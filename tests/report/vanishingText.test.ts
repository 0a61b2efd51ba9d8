import { describe, expect, it } from 'vitest';
import { seenFromText } from '../../src/report/words/seenFromText.js';
import { vanishingText } from '../../src/report/words/vanishingText.js';

const inches = { units: 'in', denominator: 16 } as const;

describe('how far away a joint is still seen', () => {
  it('is told up to the width of a room', () => {
    // 2 m are 6.56 ft, to the half foot 6 1/2.
    expect(vanishingText(2000, inches)).toBe('6 1/2 ft');
    expect(vanishingText(6097, inches)).toBe('beyond 20 ft');
    expect(vanishingText(20_000, { units: 'mm' })).toBe('beyond 6 m');
  });

  it('reads as a sentence either way', () => {
    expect(seenFromText(2000, { units: 'mm' })).toBe('from as far as 2 m');
    expect(seenFromText(9000, { units: 'mm' })).toBe('from beyond 6 m');
  });
});
