import { hash3 } from '../random/hash3.js';

/**
 * Calls `visit` for scattered points of the fibre frame, the same ones whichever part is drawn.
 *
 * The frame is divided into cells; each holds a number of points that follows from its place and
 * the seed alone. `random` gives further numbers for the point being visited.
 *
 * @param perMm2 points per mm2.
 * @param cellAlongMm @param cellAcrossMm size of a cell.
 */
export function scatterOnFace(
  range: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number },
  perMm2: number,
  cellAlongMm: number,
  cellAcrossMm: number,
  seed: number,
  visit: (alongMm: number, acrossMm: number, random: () => number) => void,
): void {
  const mean = perMm2 * cellAlongMm * cellAcrossMm;
  let state = 0;
  const random = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const lastRow = Math.floor(range.y1 / cellAcrossMm);
  const lastColumn = Math.floor(range.x1 / cellAlongMm);
  for (let row = Math.floor(range.y0 / cellAcrossMm); row <= lastRow; row++) {
    for (let column = Math.floor(range.x0 / cellAlongMm); column <= lastColumn; column++) {
      state = hash3(column, row, 3, seed) | 0;
      const count = Math.floor(mean + random());
      for (let i = 0; i < count; i++) {
        const along = (column + random()) * cellAlongMm;
        const across = (row + random()) * cellAcrossMm;
        visit(along, across, random);
      }
    }
  }
}
