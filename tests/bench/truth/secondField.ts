import { createRandom } from '../../../src/core/random/createRandom.js';
import type { BoardSpec } from '../../../src/core/wood/boardSpec.js';

/** Height of the second model's field and its exact slope at a face point, mm. */
export interface FieldPoint {
  readonly f: number;
  readonly fx: number;
  readonly fy: number;
}

/** The second model of one board: a flat field whose level sets are the ring lines. */
export interface SecondField {
  at(xMm: number, yMm: number): FieldPoint;
  /** Rising levels at which ring lines run. */
  readonly levels: Float64Array;
  readonly fibreSlope: number;
  readonly fibreBendMm: number;
}

/**
 * A smooth random field on the face alone (no solid, no cone): a ramp or a trough across the
 * board, a wander along it, and a sum of random plane waves. Ring lines lie at levels with
 * gamma-distributed steps. Only for the bench: it must never be tuned against.
 */
export function secondField(board: BoardSpec): SecondField {
  const random = createRandom(board.seed ^ 0x2e0d);
  const cut = board.cut ?? 'flatsawn';
  const steep = cut === 'quartered' ? 1 : cut === 'rift' ? random.uniform(0.55, 0.8) : 0.85;
  const middle = random.uniform(0.25, 0.75) * (board.widthMm ?? 200);
  const broad = random.uniform(22, 55);
  const trend = random.uniform(-0.03, 0.03) + (cut === 'flatsawn' ? 0.02 : 0);
  const waves = Array.from({ length: 18 }, (_, i) => {
    const long = random.uniform(0.6, 1.6) * (i < 6 ? 330 : i < 12 ? 120 : 45);
    const fine = random.uniform(0.6, 1.6) * (i < 6 ? 110 : i < 12 ? 34 : 13);
    return {
      kx: (2 * Math.PI) / long,
      ky: ((2 * Math.PI) / fine) * (random.next() < 0.5 ? -1 : 1) * random.next(),
      size: (i < 6 ? 0.75 : i < 12 ? 0.22 : 0.06) * random.normal(),
      phase: random.uniform(0, 2 * Math.PI),
    };
  });
  const mean = board.ringWidthMm ?? random.uniform(1.3, 2.6);
  const levels = [-400];
  while (levels[levels.length - 1]! < 700) {
    // A gamma deviate of shape 6: the sum of six exponentials.
    let width = 0;
    for (let k = 0; k < 6; k++) width -= Math.log(1 - random.next()) / 6;
    levels.push(levels[levels.length - 1]! + Math.max(0.35, mean * width));
  }
  return {
    levels: Float64Array.from(levels),
    fibreSlope: random.normal(0, 0.012),
    fibreBendMm: random.normal(0, 1.5),
    at(x, y) {
      let f = trend * x;
      let fx = trend;
      let fy = steep;
      if (cut === 'flatsawn') {
        const t = (y - middle) / broad;
        f += steep * broad * Math.log(Math.cosh(t));
        fy = steep * Math.tanh(t);
      } else {
        f += steep * y;
      }
      for (const { kx, ky, size, phase } of waves) {
        const angle = kx * x + ky * y + phase;
        const slope = size * Math.cos(angle);
        f += size * Math.sin(angle);
        fx += kx * slope;
        fy += ky * slope;
      }
      return { f, fx, fy };
    },
  };
}

/** Index of the level at or below `f`. */
export function levelBelow(levels: Float64Array, f: number): number {
  let low = 0;
  let high = levels.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (levels[middle]! <= f) low = middle;
    else high = middle - 1;
  }
  return low;
}
