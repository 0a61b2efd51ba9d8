import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { carryErrors } from '../../../src/core/seam/carryErrors.js';
import { ownFigure } from '../../../src/core/seam/cueFigure.js';

/** Mean way of wood 0.5 to 2.2 mm deep, at most 26 mm, weighed as exp(-way / 13): by plain sums. */
function summedWayMm(sin: number): number {
  let [sum, weight] = [0, 0];
  for (let way = 0.5 / sin; way <= Math.min(26, 2.2 / sin); way += 0.001) {
    sum += way * Math.exp(-way / 13);
    weight += Math.exp(-way / 13);
  }
  return sum / weight;
}

describe('carryErrors', () => {
  it('is the rms of |1 - exp(i phi)| / 2 over normal errors (drawn at random)', () => {
    const random = createRandom(7);
    for (const [angleDeg, seDeg, frequencyPerMm] of [
      [8, 1, 0.25],
      [45, 3, 1],
      [3, 0.5, 0.5],
    ]) {
      const [angle, se] = [(angleDeg * Math.PI) / 180, (seDeg * Math.PI) / 180];
      const wayMm = summedWayMm(Math.sin(angle));
      let sum = 0;
      const draws = 40_000;
      for (let i = 0; i < draws; i++) {
        const phi = 2 * Math.PI * wayMm * frequencyPerMm * se * random.normal();
        sum += ((1 - Math.cos(phi)) ** 2 + Math.sin(phi) ** 2) / 4;
      }
      const rms = Math.sqrt(sum / draws);
      expect(Math.abs(carryErrors(angle, se)(frequencyPerMm) / rms - 1)).toBeLessThan(0.02);
    }
  });

  it('is nothing where the directions are sure, and never beyond strangers (properties)', () => {
    expect(carryErrors(0.2, 0)(1)).toBe(0);
    expect(carryErrors(0, 1)(2)).toBeCloseTo(Math.SQRT1_2, 6);
    expect(carryErrors(0.3, 0.02)(0.5)).toBeLessThan(carryErrors(0.1, 0.02)(0.5));
    expect(carryErrors(0.3, 0.02)(0.5)).toBeLessThan(carryErrors(0.3, 0.02)(1));
  });
});

describe('ownFigure (properties)', () => {
  const line = { count: 4, squares: 36, errors: 0, cubes: 108, counting: 108 };

  it('takes errors of the reading off what hides a joint, not off what is usual', () => {
    const plain = ownFigure([line]);
    const freed = ownFigure([{ ...line, errors: 20 }]);
    expect(plain.rms).toBe(3);
    expect(freed.rms).toBe(2);
    expect(freed.usual).toBe(plain.usual);
  });

  it('leaves half of the strength however large the errors are taken to be', () => {
    expect(ownFigure([{ ...line, errors: 1000 }]).rms).toBe(1.5);
  });
});
