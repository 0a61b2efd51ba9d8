import type { RandomSource } from '../../random/randomSource.js';
import { type BinMaximum, binMaxima } from './binMaxima.js';
import { type BoardScale, boardScale, channels, evidence } from './evidence.js';
import { familyP } from './familyP.js';
import { type CellRegion, lineScan } from './lineScan.js';
import { poolP } from './poolP.js';
import type { SeamMaps } from './seamMaps.js';

/** The strongest candidate of a region and how often the same board does as well by chance. */
export interface StrongestLine {
  readonly region: CellRegion;
  /** Row at the region's middle column, and rows gained per column. */
  readonly row: number;
  readonly slope: number;
  readonly evidence: number;
  /** Evidence of the weaker half of its length: a line that only half a joint lies on has little. */
  readonly weakerHalf: number;
  readonly p: number;
}

/** Greatest tilt of a seam against the panel's edge, rad (3 deg). */
export const maxTiltRad = 0.0524;
const binMm = 3;
/** Nearer to the region's edge the bands beside a candidate would reach over it. */
const edgeMm = 8;
const blocksPerSeam = 12;
const shuffles = 6;
/** Candidates less likely than this by their peers are worth the shuffles. */
const worthAShuffle = 0.02;

/**
 * Looks for the strongest seam along x in a region and judges it against the same board three
 * ways: its peers (other lines at the same tilts), lines of the same length tilted 4.5 to 10.5 deg off
 * to either side, and lines whose blocks are moved across the board one by one. p is the largest.
 */
export function strongestLine(
  maps: SeamMaps,
  region: CellRegion,
  random: RandomSource,
): StrongestLine | null {
  const rows = region.row1 - region.row0;
  const columns = region.col1 - region.col0;
  const edge = Math.round(edgeMm * maps.rowsPerMm);
  const bin = Math.max(2, Math.round(binMm * maps.rowsPerMm));
  if (columns < 3 || rows < 2 * edge + 8 * bin) return null;
  const slopes = slopesAround(maps, columns, 0);
  const scan = lineScan(maps, region, slopes);
  const scale = boardScale(maps, scan, bin, edge);
  const peers = binMaxima(evidence(maps, scan, scale), rows, bin, edge);
  if (peers.length === 0) return null;
  const top = peers.reduce((a, b) => (b.value > a.value ? b : a));
  const slope = slopes[top.tilt];
  const weakerHalf = Math.min(
    ...halves(region).map((half) => {
      const row = top.row + slope * ((half.col0 + half.col1 - region.col0 - region.col1) / 2);
      const own = evidence(maps, lineScan(maps, half, [slope]), scale);
      return own[Math.min(rows - 1, Math.max(0, Math.round(row)))] || 0;
    }),
  );
  const line = { region, row: region.row0 + top.row, slope, evidence: top.value, weakerHalf };
  const pPeers = familyP(top.value, peers.length, channels.length);
  if (pPeers > worthAShuffle) return { ...line, p: pPeers };
  const judge = (pool: BinMaximum[]) =>
    poolP(
      pool.map((m) => m.value),
      top.value,
      peers.length,
    );
  const pTilted = judge(tiltedLines(maps, region, columns, scale, bin, edge));
  const pShuffled = judge(shuffledLines(maps, region, slopes, scale, bin, edge, random));
  return { ...line, p: Math.max(pPeers, pTilted, pShuffled) };
}

function halves(region: CellRegion): CellRegion[] {
  const middle = (region.col0 + region.col1) >> 1;
  return [
    { ...region, col1: middle },
    { ...region, col0: middle },
  ];
}

/** Slopes in rows per column, finely enough that a line's ends move by 0.6 mm from one to the next. */
function slopesAround(maps: SeamMaps, columns: number, middleRad: number): number[] {
  const halfMm = (columns * maps.columnMm) / 2;
  const count = Math.min(30, Math.ceil((maxTiltRad * halfMm) / 0.6));
  const rowsPerColumn = maps.columnMm * maps.rowsPerMm;
  return Array.from(
    { length: 2 * count + 1 },
    (_, i) => Math.tan(middleRad + (maxTiltRad * (i - count)) / count) * rowsPerColumn,
  );
}

function tiltedLines(
  maps: SeamMaps,
  region: CellRegion,
  columns: number,
  scale: BoardScale,
  bin: number,
  edge: number,
): BinMaximum[] {
  const rows = region.row1 - region.row0;
  return [-2.5 * maxTiltRad, 2.5 * maxTiltRad].flatMap((middleRad) => {
    const scan = lineScan(maps, region, slopesAround(maps, columns, middleRad));
    return binMaxima(evidence(maps, scan, scale), rows, bin, edge);
  });
}

function shuffledLines(
  maps: SeamMaps,
  region: CellRegion,
  slopes: readonly number[],
  scale: BoardScale,
  bin: number,
  edge: number,
  random: RandomSource,
): BinMaximum[] {
  const rows = region.row1 - region.row0;
  const perBlock = Math.max(1, Math.ceil((region.col1 - region.col0) / blocksPerSeam));
  return Array.from({ length: shuffles }, () => {
    const shift = new Int32Array(maps.columns);
    for (let c = region.col0; c < region.col1; c++) {
      const first = (c - region.col0) % perBlock === 0;
      shift[c] = first ? random.integer(rows) : shift[c - 1];
    }
    const scan = lineScan(maps, region, slopes, shift);
    return binMaxima(evidence(maps, scan, scale), rows, bin, edge);
  }).flat();
}
