import type { RandomSource } from './randomSource.js';

/**
 * Starts a repeatable random stream from a whole-number seed.
 *
 * The generator is sfc32 (Doty-Humphrey, PractRand: 128 bits of state, 32-bit counter, period at
 * least 2^32), its state filled from the seed by splitmix32 and run 12 rounds before use. Normal
 * deviates by the polar method (Marsaglia & Bray 1964).
 *
 * @param seed whole number; only its low 32 bits count.
 */
export function createRandom(seed: number): RandomSource {
  let mixed = seed | 0;
  const splitmix = () => {
    mixed = (mixed + 0x9e3779b9) | 0;
    let z = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return (z ^ (z >>> 15)) | 0;
  };
  let a = splitmix();
  let b = splitmix();
  let c = splitmix();
  let counter = 1;
  const next = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return (sum >>> 0) / 4294967296;
  };
  for (let round = 0; round < 12; round++) next();

  let spare: number | null = null;
  const standardNormal = () => {
    if (spare !== null) {
      const ready = spare;
      spare = null;
      return ready;
    }
    for (;;) {
      const u = 2 * next() - 1;
      const v = 2 * next() - 1;
      const square = u * u + v * v;
      if (square > 0 && square < 1) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = v * scale;
        return u * scale;
      }
    }
  };
  return {
    next,
    uniform: (low, high) => low + (high - low) * next(),
    integer: (count) => Math.floor(next() * count),
    normal: (mean = 0, standardDeviation = 1) => mean + standardDeviation * standardNormal(),
  };
}
