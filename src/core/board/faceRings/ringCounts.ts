import type { Plane } from '../../image/plane.js';

/** Rings crossed per millimetre of the width, in strips of a face. */
export interface RingCounts {
  /** Middle of each strip across the width, mm. */
  readonly yMm: Float64Array;
  /** Rings per mm across the width. */
  readonly perMm: Float64Array;
  /** Rings counted in all, over all stations, and the number of stations. */
  readonly stations: number;
}

const stationMm = 6;
const marginMm = 2;
const turnShare = 1.3;

/**
 * Counts rings from edge to edge: at many stations along the board a line across the width is
 * walked, and every dip below and rise above by more than `turnShare` times the usual swing is one
 * ring.
 *
 * @param lines ring lines of the face, carried along the grain, slow changes removed.
 */
export function ringCounts(lines: Plane, pxPerMm: number, stripMm: number): RingCounts {
  const { width, height, data } = lines;
  const strips = Math.max(1, Math.floor((height / pxPerMm - 2 * marginMm) / stripMm));
  const counts = new Float64Array(strips);
  let stations = 0;
  const turn = turnShare * rmsOf(data);
  for (
    let x = Math.round(marginMm * pxPerMm);
    x < width - marginMm * pxPerMm;
    x += Math.round(stationMm * pxPerMm)
  ) {
    stations++;
    // Zigzag: the last extreme is settled once the profile has come back from it by `turn`.
    let [low, high, rising] = [data[x], data[x], true];
    for (let y = 1; y < height; y++) {
      const value = data[y * width + x];
      if (rising) {
        if (value > high) high = value;
        else if (value < high - turn) [rising, low] = [false, value];
        continue;
      }
      if (value < low) low = value;
      else if (value > low + turn) {
        [rising, high] = [true, value];
        const strip = Math.floor((y / pxPerMm - marginMm) / stripMm);
        if (strip >= 0 && strip < strips) counts[strip]++;
      }
    }
  }
  return {
    yMm: Float64Array.from(counts, (_, k) => marginMm + (k + 0.5) * stripMm),
    perMm: counts.map((count) => count / (Math.max(1, stations) * stripMm)),
    stations,
  };
}

function rmsOf(data: Float32Array): number {
  let sum = 0;
  for (const value of data) sum += value * value;
  return Math.sqrt(sum / Math.max(1, data.length));
}
