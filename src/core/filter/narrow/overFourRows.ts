import type { Plane } from '../../image/plane.js';
import { reflectIndex } from '../reflectIndex.js';

/** Taps on either side of the middle that the narrow filters have room for. */
export const narrowRadiusPx = 6;
const rows = 4 + 2 * narrowRadiusPx;

/** Values from the start of one buffered row to the start of the next. */
export const narrowPitch = (width: number) => 4 * Math.ceil(width / 4);

/** A buffer for the sixteen rows that four filtered rows need. */
export const narrowRing = (width: number) => new Float64Array(rows * narrowPitch(width));

/**
 * Walks down a plane four rows at a time for filters of up to 13 taps; mirrored borders.
 *
 * @param source plane to walk; rows may be overwritten once `down` was told of them.
 * @param along filters one row, given with six mirrored values at each end, into the callers'
 *   rings at `start`.
 * @param down combines sixteen ring rows, whose starts are given from the top, into rows
 *   y .. y + 3; rows beyond the plane are to be thrown away.
 */
export function overFourRows(
  source: Plane,
  along: (padded: Float64Array, start: number) => void,
  down: (y: number, starts: Int32Array) => void,
): void {
  const { width, height } = source;
  const pitch = narrowPitch(width);
  const padded = new Float64Array(pitch + 2 * narrowRadiusPx);
  const starts = new Int32Array(rows);
  for (let y = 0, ready = 0; y < height; y += 4) {
    for (; ready < Math.min(y + 4 + narrowRadiusPx, height); ready++) {
      copyRow(source, ready, padded);
      along(padded, (ready % rows) * pitch);
    }
    for (let i = 0; i < rows; i++) {
      starts[i] = (reflectIndex(y + i - narrowRadiusPx, height) % rows) * pitch;
    }
    down(y, starts);
  }
}

function copyRow({ data, width }: Plane, y: number, padded: Float64Array): void {
  const start = y * width;
  padded.set(data.subarray(start, start + width), narrowRadiusPx);
  for (let i = 0; i < narrowRadiusPx; i++) {
    padded[i] = data[start + reflectIndex(i - narrowRadiusPx, width)];
    padded[narrowRadiusPx + width + i] = data[start + reflectIndex(width + i, width)];
  }
}
