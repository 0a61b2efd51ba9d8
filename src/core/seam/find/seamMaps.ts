import type { BlockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';
import { transposePlane } from '../../image/transposePlane.js';
import type { PanelPlanes } from '../seamWood.js';
import { colourStepMaps } from './colourStepMaps.js';
import { columnMeans } from './columnMeans.js';
import { discordMap } from './discordMap.js';
import { excessMap } from './excessMap.js';
import { ridgeMap } from './ridgeMap.js';

/**
 * One cue in cells of columnMm along the seam by 1 / rowsPerMm across: index column * rows + row,
 * because lines are summed column by column.
 */
export interface CueMap {
  /**
   * `strangers` and `stepped` are log likelihood ratios (`excessMap`) and sum over a line; the others
   * are signed and averaged.
   */
  readonly cue: 'strangers' | 'stepped' | 'ridge' | 'lightness' | 'a' | 'b';
  readonly value: Float32Array;
}

/** What speaks for a seam at every place of the panel, for seams along x. */
export interface SeamMaps {
  readonly columns: number;
  readonly rows: number;
  readonly columnMm: number;
  readonly rowsPerMm: number;
  readonly cues: readonly CueMap[];
}

const cellsPerColumn = 4;
const cellMm = 1.5;

/**
 * Maps of every cue of a seam along x.
 *
 * @param planes the panel (transposed for crosscuts).
 * @param reduced log luminance, averaged down. @param pxPerMm its scale.
 * @param blocks gradient products of its ring lines (`carriedBlocks`).
 */
export function seamMaps(
  planes: PanelPlanes,
  reduced: Plane,
  blocks: BlockTensor,
  pxPerMm: number,
): SeamMaps {
  const cellPx = Math.max(1, Math.round(cellMm * pxPerMm));
  const columnPx = cellPx * cellsPerColumn;
  const columns = Math.max(1, Math.floor(reduced.width / columnPx));
  const columnMm = columnPx / pxPerMm;
  const bands = discordMap(reduced, pxPerMm, blocks, columnPx, columns);
  const excess = bands.map((band) => excessMap(band, columns, pxPerMm));
  const means = columnMeans(reduced, columnPx, columns);
  const ridge = transposePlane({ ...means, data: ridgeMap(means, pxPerMm) }).data;
  const [lightness, a, b] = colourStepMaps(planes, columns, columnMm, reduced.height, pxPerMm);
  return {
    columns,
    rows: reduced.height,
    columnMm,
    rowsPerMm: pxPerMm,
    cues: [
      { cue: 'strangers', value: summed(excess.map(({ strangers }) => strangers)) },
      { cue: 'stepped', value: summed(excess.map(({ stepped }) => stepped)) },
      { cue: 'ridge', value: ridge },
      { cue: 'lightness', value: lightness },
      { cue: 'a', value: a },
      { cue: 'b', value: b },
    ],
  };
}

const summed = ([first, ...rest]: readonly Float32Array[]): Float32Array =>
  first.map((value, i) => rest.reduce((sum, band) => sum + band[i], value));
