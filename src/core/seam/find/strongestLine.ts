import type { RandomSource } from '../../random/randomSource.js';
import { type BinMaximum, binMaxima } from './binMaxima.js';
import { boardP } from './boardP.js';
import { boardScale, discordAlone, evidence } from './evidence.js';
import { type CellRegion, type LineScan, lineScan } from './lineScan.js';
import { poolP } from './poolP.js';
import type { SeamMaps } from './seamMaps.js';
import { slopesAround } from './slopesAround.js';
import { withoutLine } from './withoutLine.js';
import { shuffledLines, tiltedLines } from './witnessLines.js';

/** The strongest candidate of a region and how often the same board does as well by chance. */
export interface StrongestLine {
  readonly region: CellRegion;
  /** Row at the region's middle column, and rows gained per column. */
  readonly row: number;
  readonly slope: number;
  readonly evidence: number;
  /** Separate lines that it is the best of. */
  readonly tries: number;
  /** Evidence of the weakest quarter of its length: a line that leaves its joint has little. */
  readonly weakestQuarter: number;
  readonly p: number;
}

/** Greatest tilt of a seam against the panel's edge, rad (3 deg). */
export const maxTiltRad = 0.0524;
/** Most seams run along the edge that the photo was squared to, give or take this, rad (0.5 deg). */
export const usualTiltRad = 0.0087;
const binMm = 3;
/** Nearer to the region's edge the bands beside a candidate would reach over it. */
const edgeMm = 8;
/** Candidates less likely than this by their peers are worth the shuffles. */
const worthAShuffle = 0.09;

/**
 * Looks for the strongest seam along x in a region and judges it against the same board three
 * ways: its peers (other lines at the same tilts), lines of the same length tilted 4.5 to 10.5 deg off
 * to either side, and lines whose blocks are moved across the board one by one. p is the largest.
 *
 * Straight grain a few degrees off runs along the tilted lines, and each of its rings is as plain a
 * line as any joint. Where these witnesses object, broken lines are judged by themselves as well, by
 * evidence that has paid for it (`pooledSurprise`): rings run on along the grain, a joint breaks them.
 *
 * @param tiltRad lines up to this far off x are tried; the fewer are tried, the less must be seen.
 */
export function strongestLine(
  maps: SeamMaps,
  region: CellRegion,
  tiltRad: number,
  random: RandomSource,
): StrongestLine | null {
  const rows = region.row1 - region.row0;
  const columns = region.col1 - region.col0;
  const edge = Math.round(edgeMm * maps.rowsPerMm);
  const bin = Math.max(2, Math.round(binMm * maps.rowsPerMm));
  if (columns < 3 || rows < 2 * edge + 8 * bin) return null;
  const slopes = slopesAround(maps, columns, 0, tiltRad);
  const scan = lineScan(maps, region, slopes, edge);
  const scale = boardScale(maps, scan, bin, edge);
  const here = evidence(maps, scan, scale);
  const peers = binMaxima(here, rows, bin, edge);
  if (peers.length === 0) return null;
  const top = peers.reduce((a, b) => (b.value > a.value ? b : a));
  const slope = slopes[top.tilt];
  const weakestQuarter = Math.min(
    ...quarters(region).map((quarter) => {
      const row = top.row + slope * ((quarter.col0 + quarter.col1 - region.col0 - region.col1) / 2);
      const own = evidence(maps, lineScan(maps, quarter, [slope]), scale);
      return own[Math.min(rows - 1, Math.max(0, Math.round(row)))] || 0;
    }),
  );
  const placed = placeOf(here, rows, slopes, top, bin / 2);
  const line = {
    region,
    row: region.row0 + placed.row,
    slope: placed.slope,
    evidence: top.value,
    tries: peers.length,
    weakestQuarter,
  };
  const pPeers = boardP(top.value, peers.length);
  if (pPeers > worthAShuffle) return { ...line, p: pPeers };
  const rest = withoutLine(maps, region, line.row, line.slope, bin);
  const witnesses = [
    tiltedLines(maps, region, tiltRad, edge),
    shuffledLines(rest, region, slopes, edge, random),
  ];
  const chance = (read: (lines: LineScan) => Float32Array, value: number) => {
    const pools = witnesses.map((scans) =>
      scans.flatMap((s) => binMaxima(read(s), rows, bin, edge)),
    );
    const byPools = pools.map((pool) => poolP(pool, value, peers.length));
    return Math.max(boardP(value, peers.length), ...byPools);
  };
  const p = chance((lines) => evidence(maps, lines, scale), top.value);
  if (p === pPeers) return { ...line, p };
  const byDiscord = (lines: LineScan) => discordAlone(maps, lines);
  return { ...line, p: Math.min(p, chance(byDiscord, byDiscord(scan)[top.tilt * rows + top.row])) };
}

/** Evidence is worth this many nats of likelihood where lines near each other are weighed. */
const evidencePerNat = 3;

/** Where the line most likely runs: the mean of the lines close to the strongest, weighed by evidence. */
function placeOf(
  values: Float32Array,
  rows: number,
  slopes: readonly number[],
  top: BinMaximum,
  reachRows: number,
): { readonly row: number; readonly slope: number } {
  let [w, row, slope] = [0, 0, 0];
  const [from, to] = [Math.max(0, top.row - reachRows), Math.min(rows - 1, top.row + reachRows)];
  slopes.forEach((tilt, t) => {
    for (let r = Math.ceil(from); r <= to; r++) {
      const q = Math.exp((values[t * rows + r] - top.value) / evidencePerNat);
      if (Number.isNaN(q)) continue;
      w += q;
      row += q * r;
      slope += q * tilt;
    }
  });
  return { row: row / w, slope: slope / w };
}

function quarters(region: CellRegion): CellRegion[] {
  const columns = region.col1 - region.col0;
  const edge = (k: number) => region.col0 + Math.round((k * columns) / 4);
  return [0, 1, 2, 3]
    .map((k) => ({ ...region, col0: edge(k), col1: edge(k + 1) }))
    .filter((quarter) => quarter.col1 > quarter.col0);
}
