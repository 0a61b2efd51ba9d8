import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { commonShift } from '../../../src/core/seam/commonShift.js';

const random = createRandom(31);
const wood = Array.from({ length: 21 }, () => random.uniform(40, 80));
const turned = [...wood].reverse();

describe('commonShift (properties)', () => {
  it('is the step between boards, in whatever order their stretches come', () => {
    for (const step of [-4, 0, 2.5]) {
      const other = turned.map((x) => x + step);
      expect(commonShift(wood, other)).toBeCloseTo(step, 10);
      expect(commonShift(other, wood)).toBeCloseTo(-step, 10);
    }
  });

  it('is nothing where one side only has more latewood', () => {
    const pale = Array.from({ length: 21 }, (_, i) => (i < 4 ? 45 : 75));
    const darker = Array.from({ length: 21 }, (_, i) => (i < 9 ? 45 : 75));
    expect(commonShift(pale, darker)).toBe(0);
  });

  it('is nothing where the ranks move both ways', () => {
    const spread = wood.map((x) => 60 + 2 * (x - 60));
    expect(commonShift(wood, spread)).toBe(0);
  });

  it('tells one stretch as it is', () => {
    expect(commonShift([50], [53])).toBe(3);
  });
});
