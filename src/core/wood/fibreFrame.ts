import type { Board } from './board.js';

/**
 * Where a point of the board lies in its fibre: along it and across it. Texture is drawn in this
 * frame, so that streaks and pores follow the fibre (slope, wander, spiral, way round a knot).
 */
export interface FibreFrame {
  /** Across-fibre place of board point (x, y), mm. */
  acrossMm(xMm: number, yMm: number): number;
  /** Board y of the point `acrossMm` across the fibre at board x. */
  boardYMm(xMm: number, acrossMm: number): number;
}

/** Builds the frame over board x from `x0Mm` to `x1Mm` (the drift is tabled every mm). */
export function fibreFrame(board: Board, x0Mm: number, x1Mm: number): FibreFrame {
  const first = Math.floor(Math.min(x0Mm, x1Mm)) - 30;
  const count = Math.ceil(Math.abs(x1Mm - x0Mm)) + 62;
  const drift = Float64Array.from({ length: count }, (_, i) => board.field.fibreDriftMm(first + i));
  const driftAt = (x: number) => {
    const place = Math.min(count - 1.001, Math.max(0, x - first));
    const i = place | 0;
    return drift[i]! + (drift[i + 1]! - drift[i]!) * (place - i);
  };
  const knots = board.knots;
  if (knots.length === 0) {
    return {
      acrossMm: (x, y) => y - driftAt(x),
      boardYMm: (x, across) => across + driftAt(x),
    };
  }
  // Fibre parts about a knot as a stream parts about a stone, flat inside the branch itself.
  const parted = (x: number, y: number) => {
    let shift = 0;
    for (const knot of knots) {
      const dx = x - knot.xMm;
      const dy = y - knot.yMm;
      const r2 = knot.radiusMm * knot.radiusMm * 1.4;
      shift -= (dy * r2) / (r2 + dy * dy + 0.12 * dx * dx);
    }
    return shift;
  };
  return {
    acrossMm: (x, y) => y - driftAt(x) + parted(x, y),
    boardYMm(x, across) {
      let y = across + driftAt(x);
      for (let round = 0; round < 4; round++) y = across + driftAt(x) - parted(x, y);
      return y;
    },
  };
}
