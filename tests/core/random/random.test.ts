import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { gradientNoise3, type NoiseSample } from '../../../src/core/random/gradientNoise3.js';
import { hash3 } from '../../../src/core/random/hash3.js';
import { StreakNoise } from '../../../src/core/random/streakNoise.js';

const sample = (): NoiseSample => ({ value: 0, dx: 0, dy: 0, dz: 0 });

describe('createRandom', () => {
  it('repeats itself from the same seed and differs from another', () => {
    const [a, b, c] = [createRandom(7), createRandom(7), createRandom(8)];
    const draw = (r: { next(): number }) => Array.from({ length: 50 }, () => r.next());
    const first = draw(a);
    expect(draw(b)).toEqual(first);
    expect(draw(c)).not.toEqual(first);
  });

  it('is uniform: mean 1/2, variance 1/12, each tenth equally full', () => {
    const random = createRandom(3);
    const values = Array.from({ length: 40000 }, () => random.next());
    const mean = values.reduce((s, v) => s + v, 0) / values.length;
    const variance = values.reduce((s, v) => s + (v - mean) ** 2, 0) / values.length;
    expect(mean).toBeCloseTo(0.5, 2);
    expect(variance).toBeCloseTo(1 / 12, 3);
    for (let k = 0; k < 10; k++) {
      const share = values.filter((v) => Math.floor(v * 10) === k).length / values.length;
      expect(Math.abs(share - 0.1)).toBeLessThan(0.01);
    }
  });

  it('gives normal deviates: moments 0, 1, 0, 3', () => {
    const random = createRandom(11);
    const values = Array.from({ length: 60000 }, () => random.normal());
    const moment = (k: number) => values.reduce((s, v) => s + v ** k, 0) / values.length;
    expect(Math.abs(moment(1))).toBeLessThan(0.02);
    expect(moment(2)).toBeCloseTo(1, 1);
    expect(Math.abs(moment(3))).toBeLessThan(0.06);
    expect(Math.abs(moment(4) - 3)).toBeLessThan(0.15);
  });
});

describe('hash3', () => {
  it('turns half of its bits when one coordinate moves by one', () => {
    let turned = 0;
    let count = 0;
    for (let i = -50; i < 50; i++) {
      for (const other of [hash3(i + 1, 3, -2, 9), hash3(i, 4, -2, 9), hash3(i, 3, -1, 9)]) {
        let difference = hash3(i, 3, -2, 9) ^ other;
        while (difference !== 0) {
          turned += difference & 1;
          difference >>>= 1;
        }
        count += 32;
      }
    }
    expect(Math.abs(turned / count - 0.5)).toBeLessThan(0.03);
  });
});

describe('gradientNoise3', () => {
  const place = fc.double({ min: -40, max: 40, noNaN: true });

  it('has the gradient that finite differences find', () => {
    fc.assert(
      fc.property(place, place, place, (x, y, z) => {
        const [at, low, high] = [sample(), sample(), sample()];
        const h = 1e-5;
        gradientNoise3(x, y, z, 5, at);
        gradientNoise3(x - h, y, z, 5, low);
        gradientNoise3(x + h, y, z, 5, high);
        expect(at.dx).toBeCloseTo((high.value - low.value) / (2 * h), 5);
        gradientNoise3(x, y - h, z, 5, low);
        gradientNoise3(x, y + h, z, 5, high);
        expect(at.dy).toBeCloseTo((high.value - low.value) / (2 * h), 5);
        gradientNoise3(x, y, z - h, 5, low);
        gradientNoise3(x, y, z + h, 5, high);
        expect(at.dz).toBeCloseTo((high.value - low.value) / (2 * h), 5);
      }),
    );
  });

  it('is zero at lattice points and has the spread that its users assume', () => {
    const at = sample();
    gradientNoise3(3, -4, 5, 1, at);
    expect(Math.abs(at.value)).toBe(0);
    const random = createRandom(1);
    let square = 0;
    let largest = 0;
    for (let i = 0; i < 20000; i++) {
      const [x, y, z] = [random.uniform(-99, 99), random.uniform(-99, 99), random.uniform(-99, 99)];
      gradientNoise3(x, y, z, 2, at);
      square += at.value ** 2 / 20000;
      largest = Math.max(largest, Math.abs(at.value));
    }
    expect(Math.abs(Math.sqrt(square) - 0.27)).toBeLessThan(0.02);
    expect(largest).toBeLessThan(1.1);
  });
});

describe('StreakNoise', () => {
  it('is the same wherever one comes from, within -1 to 1, and continuous', () => {
    const place = fc.double({ min: -300, max: 300, noNaN: true });
    const walked = new StreakNoise(4, 20, 0.5);
    fc.assert(
      fc.property(place, place, (x, y) => {
        const value = walked.at(x, y);
        expect(new StreakNoise(4, 20, 0.5).at(x, y)).toBe(value);
        expect(Math.abs(value)).toBeLessThanOrEqual(1);
        expect(Math.abs(walked.at(x + 1e-6, y + 1e-6) - value)).toBeLessThan(1e-4);
      }),
    );
  });
});
