import { gaussianGradient } from '../../filter/gaussianGradient.js';
import type { BlockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';
import type { PanelPlanes } from '../seamWood.js';
import { breakMaps } from './breakMaps.js';
import { carriedMap } from './carriedMap.js';
import { colourStepMaps } from './colourStepMaps.js';
import { columnMeans } from './columnMeans.js';
import { twoSidedDirection } from './direction.js';
import { ridgeMap } from './ridgeMap.js';

/** One cue in cells of columnMm along the seam by 1 / rowsPerMm across: index row * columns + column. */
export interface CueMap {
  readonly cue: 'breakFine' | 'breakCoarse' | 'breakCarried' | 'ridge' | 'lightness' | 'a' | 'b';
  /** Signed cues count only when they keep their sign along the whole line. */
  readonly signed: boolean;
  readonly value: Float32Array;
  /** Weight of each cell, 0..1: how much of the cue a seam could show there. */
  readonly weight: Float32Array | null;
}

/** What speaks for a seam at every place of the panel, for seams along x. */
export interface SeamMaps {
  readonly columns: number;
  readonly rows: number;
  readonly columnMm: number;
  readonly rowsPerMm: number;
  readonly cues: readonly CueMap[];
}

/** Lines finer than this across the grain are averaged away before looking for seams, px/mm. */
export const finderPxPerMm = 2.8;
const cellsPerColumn = 4;
const cellMm = 1.5;

/**
 * Maps of every cue of a seam along x.
 *
 * @param planes the panel (transposed for crosscuts).
 * @param reduced log luminance at about `finderPxPerMm`. @param pxPerMm its scale.
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
  const fineSlope = gaussianGradient(reduced, Math.max(0.8, 0.35 * pxPerMm));
  const coarseSlope = gaussianGradient(reduced, pxPerMm);
  const grain = twoSidedDirection(blocks, pxPerMm);
  const fine = breakMaps(fineSlope, grain, pxPerMm, { innerMm: 1.5, cellPx, columns });
  const coarse = breakMaps(coarseSlope, grain, pxPerMm, { innerMm: 3, cellPx, columns });
  const carried = carriedMap(reduced, pxPerMm, grain, cellPx, columns);
  const means = columnMeans(reduced, columnPx, columns);
  const ridge = ridgeMap(means, pxPerMm);
  const [lightness, a, b] = colourStepMaps(planes, columns, columnMm, reduced.height, pxPerMm);
  return {
    columns,
    rows: reduced.height,
    columnMm,
    rowsPerMm: pxPerMm,
    cues: [
      { cue: 'breakFine', signed: false, ...fine },
      { cue: 'breakCoarse', signed: false, ...coarse },
      { cue: 'breakCarried', signed: false, ...carried },
      { cue: 'ridge', signed: true, value: ridge, weight: null },
      { cue: 'lightness', signed: true, value: lightness, weight: null },
      { cue: 'a', signed: true, value: a, weight: null },
      { cue: 'b', signed: true, value: b, weight: null },
    ],
  };
}
