import { createRandom } from '../random/createRandom.js';
import type { RingTable } from './ringTable.js';

/** Ages are counted a little below zero because taper lowers them towards the butt end. */
const fromMm = -80;
const toMm = 700;

/**
 * Grows ring widths year by year.
 *
 * log w is a first-order random walk about the log of the median (memory 0.75 from ring to ring),
 * so good and bad years come in runs; widths stay within 0.4 to 6 mm, the range of the generator
 * in the International Tree-Ring Data Bank's summary (trade.md, ring widths).
 *
 * @param seed whole number.
 * @param medianMm median ring width, mm.
 * @param logSd standard deviation of ln w.
 */
export function growRings(seed: number, medianMm: number, logSd: number): RingTable {
  const random = createRandom(seed);
  const memory = 0.75;
  const borders = [fromMm];
  let walk = random.normal(0, logSd);
  let border = fromMm;
  while (border < toMm) {
    walk = memory * walk + random.normal(0, logSd * Math.sqrt(1 - memory * memory));
    border += Math.min(6, Math.max(0.4, medianMm * Math.exp(walk)));
    borders.push(border);
  }
  return { innerMm: Float64Array.from(borders) };
}
