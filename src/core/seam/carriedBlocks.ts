import { averageDown } from '../filter/averageDown.js';
import { gaussianBlur } from '../filter/gaussianBlur.js';
import { alongLines } from '../grain/alongLines.js';
import { type BlockTensor, blockTensor } from '../grain/blockTensor.js';
import { capEnergy } from '../grain/capEnergy.js';
import { carryAlongGrain } from '../grain/carryAlongGrain.js';
import type { Plane } from '../image/plane.js';

/** Scale at which grain direction is read: the ring lines need no more, px/mm. */
const grainPxPerMm = 2.8;
const firstSlopeMm = 0.5;
const slopeMm = 0.35;
/** Window of the first look, and length over which lines are then carried, mm. */
const windowMm = 3;
const carryMm = 5;
/**
 * The panel's outermost millimetre is painted over (`panelPlanes`), which the second column still feels;
 * the second row beside a joint feels nothing of it and is what lies nearest.
 */
const rim = { columns: 2, rows: 1 };

/** Gradient products of the ring lines, and the energy (Jxx + Jyy) that pores and fibre had with them. */
export interface CarriedBlocks extends BlockTensor {
  readonly uncarried: Float32Array;
}

/**
 * Gradient products of the ring lines of one board, free of pores and fibre: a first direction,
 * the picture averaged along it, products of that. Done for each side of a seam by itself, so
 * that nothing of the other board is carried in.
 *
 * @param wood one side's log luminance. @param pxPerMm its scale.
 */
export function carriedBlocks(wood: Plane, pxPerMm: number): CarriedBlocks {
  const factor = Math.max(1, Math.round(pxPerMm / grainPxPerMm));
  const source = factor > 1 ? averageDown(wood, factor) : wood;
  const scale = pxPerMm / factor;
  const blockPx = Math.max(1, Math.round(scale));
  const first = capEnergy(blockTensor(source, firstSlopeMm * scale, blockPx, scale, rim));
  const uncarried = first.jxx.map((xx, i) => xx + first.jyy[i]);
  const lines = carryAlongGrain(source, directions(first, blockPx), carryMm * scale);
  const carried = capEnergy(
    blockTensor(lines, Math.max(0.7, slopeMm * scale), blockPx, scale, rim),
  );
  return { ...carried, uncarried };
}

/** Rows that a side must be a whole multiple of, so that blocks end at the seam, px. */
export function blockRowsPx(pxPerMm: number): number {
  const factor = Math.max(1, Math.round(pxPerMm / grainPxPerMm));
  return factor * Math.max(1, Math.round(pxPerMm / factor));
}

function directions({ width, height, stepMm, jxx, jxy, jyy }: BlockTensor, blockPx: number) {
  const smooth = (data: Float32Array) =>
    gaussianBlur({ width, height, data }, windowMm / stepMm).data;
  const cosTwice = smooth(jxx.map((xx, i) => xx - jyy[i]));
  const sinTwice = smooth(jxy.map((xy) => 2 * xy));
  return { width, height, blockPx, ...alongLines(cosTwice, sinTwice) };
}
