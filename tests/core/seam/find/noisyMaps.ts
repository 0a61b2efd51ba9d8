import { createRandom } from '../../../../src/core/random/createRandom.js';
import type { SeamMaps } from '../../../../src/core/seam/find/seamMaps.js';

/**
 * Maps of noise, with one line of height `strength` at row, tilted by slope rows per column.
 *
 * @param lineEnds column where the line ends, the last by default.
 */
export function noisyMaps(
  strength: number,
  row: number,
  slope: number,
  seed: number,
  lineEnds = 40,
): SeamMaps {
  const [columns, rows] = [40, 300];
  const random = createRandom(seed);
  const names = ['strangers', 'stepped', 'ridge', 'lightness', 'a', 'b'] as const;
  const cues = names.map((cue) => {
    // A cell's likelihood ratio is small and a little against a joint where there is none.
    const ratio = cue === 'strangers' || cue === 'stepped';
    const [spread, middle] = ratio ? [0.05, -0.02] : [1, 0];
    const value = Float32Array.from(
      { length: columns * rows },
      () => middle + spread * random.normal(),
    );
    for (let c = 0; c < lineEnds; c++) {
      const y = Math.round(row + slope * (c - (columns - 1) / 2));
      value[c * rows + y]! += spread * strength;
    }
    return { cue, value };
  });
  return { columns, rows, columnMm: 7, rowsPerMm: 3, cues };
}
