import { describe, expect, it } from 'vitest';
import { lengthWords } from '../../../src/core/units/lengthWords.js';

describe('a length in a sentence', () => {
  it('is never nothing where it is something', () => {
    // Half of 1/64 in is 0.198 mm: from there on 1/64 in is the nearest mark.
    expect(lengthWords(0)).toBe('0 in (0 mm)');
    expect(lengthWords(0.03)).toBe('under 1/64 in (0.03 mm)');
    expect(lengthWords(0.19)).toBe('under 1/64 in (0.2 mm)');
    expect(lengthWords(0.2)).toBe('1/64 in (0.2 mm)');
    expect(lengthWords(25.4)).toBe('1 in (25.4 mm)');
  });
});
