import { averageDown } from '../../filter/averageDown.js';
import type { BlockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';
import { transposePlane } from '../../image/transposePlane.js';
import type { Progress } from '../../progress.js';
import type { RandomSource } from '../../random/randomSource.js';
import type { LineMm } from '../../results/scoreResult.js';
import { carriedBlocks } from '../carriedBlocks.js';
import type { PanelPlanes } from '../seamWood.js';
import type { CellRegion } from './lineScan.js';
import { finderPxPerMm, type SeamMaps, seamMaps } from './seamMaps.js';
import { maxTiltRad, type StrongestLine, strongestLine, usualTiltRad } from './strongestLine.js';

/** A seam that the photo shows, with the chance of such a break where there is none. */
export interface FoundSeam {
  readonly kind: 'rip' | 'crosscut';
  readonly line: LineMm;
  readonly p: number;
}

/** A line is called a seam when the same board does as well by chance less often than this. */
export const seamP = 0.003;
const deepestCut = 8;
/** Wood differs from its panel's mean by no more than this in log luminance (a factor of 2). */
const woodContrast = 0.7;

/** A rectangle of the panel, mm. */
interface Rectangle {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/**
 * Finds the seams of a panel: the strongest break through a rectangle, along or across, splits it
 * in two, and each part is searched again. Saw cuts and glue-ups are such a tree of through-going
 * lines: end pieces beside a drawer opening end at the rails.
 */
export function findSeams(
  planes: PanelPlanes,
  random: RandomSource,
  progress?: Progress,
): FoundSeam[] {
  const { width, height } = planes.logLuminance;
  const factor = Math.max(1, Math.round(planes.pxPerMm / finderPxPerMm));
  const reduced = tamed(averageDown(planes.logLuminance, factor));
  const pxPerMm = planes.pxPerMm / factor;
  progress?.(0.1, 'reading the panel along its length');
  const blocks = carriedBlocks(reduced, pxPerMm);
  const along = seamMaps(planes, reduced, blocks, pxPerMm);
  progress?.(0.4, 'reading the panel across its width');
  const across = seamMaps(
    transposed(planes),
    transposePlane(reduced),
    transposedBlocks(blocks),
    pxPerMm,
  );
  const found: FoundSeam[] = [];
  const whole = { x0: 0, y0: 0, x1: width / planes.pxPerMm, y1: height / planes.pxPerMm };
  const open: { rect: Rectangle; depth: number }[] = [{ rect: whole, depth: 0 }];
  for (let part = open.pop(); part; part = open.pop()) {
    progress?.(0.7, 'looking for joints');
    const seam = strongestOf(along, across, part.rect, random);
    if (!seam) continue;
    found.push(seam);
    if (part.depth >= deepestCut) continue;
    for (const rect of parts(part.rect, seam)) open.push({ rect, depth: part.depth + 1 });
  }
  return found.sort((a, b) => a.line.y1Mm - b.line.y1Mm || a.line.x1Mm - b.line.x1Mm);
}

/**
 * Limits a reveal's black (or glare) to what wood may do, so that it does not turn the grain
 * direction of everything beside it.
 */
function tamed(plane: Plane): Plane {
  let sum = 0;
  for (const value of plane.data) sum += value;
  const mean = sum / plane.data.length;
  const data = plane.data.map((v) =>
    Math.max(mean - woodContrast, Math.min(mean + woodContrast, v)),
  );
  return { ...plane, data };
}

function transposed(planes: PanelPlanes): PanelPlanes {
  const { lightness, a, b, reduceBy } = planes.lab;
  return {
    pxPerMm: planes.pxPerMm,
    logLuminance: { width: 0, height: 0, data: new Float32Array(0) },
    lab: {
      lightness: transposePlane(lightness),
      a: transposePlane(a),
      b: transposePlane(b),
      reduceBy,
    },
  };
}

function transposedBlocks({ width, height, stepMm, jxx, jxy, jyy }: BlockTensor): BlockTensor {
  const turn = (data: Float32Array) => transposePlane({ width, height, data }).data;
  return { width: height, height: width, stepMm, jxx: turn(jyy), jxy: turn(jxy), jyy: turn(jxx) };
}

function strongestOf(
  along: SeamMaps,
  across: SeamMaps,
  rect: Rectangle,
  random: RandomSource,
): FoundSeam | null {
  const rip = surerLine(along, cells(along, rect.x0, rect.x1, rect.y0, rect.y1), random);
  const cut = surerLine(across, cells(across, rect.y0, rect.y1, rect.x0, rect.x1), random);
  const sure = (line: StrongestLine | null) => (line && line.p <= seamP ? line : null);
  const [r, c] = [sure(rip), sure(cut)];
  if (r && (!c || r.weakestQuarter >= c.weakestQuarter)) {
    const [y1, y2] = ends(along, r, rect.x0, rect.x1);
    return { kind: 'rip', p: r.p, line: { x1Mm: rect.x0, y1Mm: y1, x2Mm: rect.x1, y2Mm: y2 } };
  }
  if (!c) return null;
  const [x1, x2] = ends(across, c, rect.y0, rect.y1);
  return { kind: 'crosscut', p: c.p, line: { x1Mm: x1, y1Mm: rect.y0, x2Mm: x2, y2Mm: rect.y1 } };
}

/**
 * Nearly parallel lines first; all tilts only where none of those is a seam. Two looks, so each
 * chance counts twice.
 */
function surerLine(maps: SeamMaps, region: CellRegion, random: RandomSource): StrongestLine | null {
  for (const tiltRad of [usualTiltRad, maxTiltRad]) {
    const line = strongestLine(maps, region, tiltRad, random);
    if (line && 2 * line.p <= seamP) return { ...line, p: 2 * line.p };
  }
  return null;
}

function cells(maps: SeamMaps, x0: number, x1: number, y0: number, y1: number) {
  return {
    col0: Math.max(0, Math.ceil(x0 / maps.columnMm - 1e-6)),
    col1: Math.min(maps.columns, Math.floor(x1 / maps.columnMm + 1e-6)),
    row0: Math.max(0, Math.round(y0 * maps.rowsPerMm)),
    row1: Math.min(maps.rows, Math.round(y1 * maps.rowsPerMm)),
  };
}

/** Where the line meets the two ends of its stretch, mm across. */
function ends(maps: SeamMaps, line: StrongestLine, x0: number, x1: number): [number, number] {
  const middleMm = ((line.region.col0 + line.region.col1) / 2) * maps.columnMm;
  const y = (line.row + 0.5) / maps.rowsPerMm;
  const perMm = line.slope / maps.columnMm / maps.rowsPerMm;
  return [y + (x0 - middleMm) * perMm, y + (x1 - middleMm) * perMm];
}

/** Half of the widest joint or reveal that is left out of the parts beside it, mm. */
const clearMm = 1.5;

/** The two rectangles beside a seam; a tilted seam leaves out the sliver it leans over. */
function parts(rect: Rectangle, { kind, line }: FoundSeam): Rectangle[] {
  if (kind === 'rip') {
    const [low, high] = [Math.min(line.y1Mm, line.y2Mm), Math.max(line.y1Mm, line.y2Mm)];
    return [
      { ...rect, y1: low - clearMm },
      { ...rect, y0: high + clearMm },
    ];
  }
  const [low, high] = [Math.min(line.x1Mm, line.x2Mm), Math.max(line.x1Mm, line.x2Mm)];
  return [
    { ...rect, x1: low - clearMm },
    { ...rect, x0: high + clearMm },
  ];
}
