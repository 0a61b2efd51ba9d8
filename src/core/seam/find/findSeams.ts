import type { BlockTensor } from '../../grain/blockTensor.js';
import { transposePlane } from '../../image/transposePlane.js';
import type { Progress } from '../../progress.js';
import type { RandomSource } from '../../random/randomSource.js';
import type { PanelPlanes } from '../seamWood.js';
import { finderView } from './finderView.js';
import type { FoundSeam } from './foundSeam.js';
import type { CellRegion } from './lineScan.js';
import { openGaps } from './openGaps.js';
import { cellsOf, partsBeside, type Rectangle } from './rectangle.js';
import { type SeamMaps, seamMaps } from './seamMaps.js';
import { type GapSplit, splitAtGap } from './splitAtGap.js';
import { maxTiltRad, type StrongestLine, strongestLine, usualTiltRad } from './strongestLine.js';

/**
 * A line is called a seam when a board with none does as well by chance less often than this: with
 * its rips and its crosscuts looked at, a false seam in one panel of fifty.
 */
export const seamP = 0.01;
/** The rest of an open gap's line is one line, made by one cut: less is asked of it. */
const restLimits = { atCuts: 0.1, alone: seamP };
const deepestCut = 8;

/**
 * Finds the seams of a panel: the strongest break through a rectangle, along or across, splits it
 * in two, and each part is searched again. Saw cuts and glue-ups are such a tree of through-going
 * lines: end pieces beside a drawer opening end at the rails. Open gaps (the reveal about a front)
 * are plain to see and split the panel first.
 */
export function findSeams(
  planes: PanelPlanes,
  random: RandomSource,
  progress?: Progress,
): FoundSeam[] {
  const { width, height } = planes.logLuminance;
  progress?.(0.1, 'reading the panel along its length');
  const { plain, reduced, blocks, pxPerMm } = finderView(planes.logLuminance, planes.pxPerMm);
  const along = seamMaps(planes, reduced, blocks, pxPerMm);
  progress?.(0.4, 'reading the panel across its width');
  const across = seamMaps(
    transposed(planes),
    transposePlane(reduced),
    transposedBlocks(blocks),
    pxPerMm,
  );
  const gaps = {
    rip: openGaps(plain, pxPerMm),
    crosscut: openGaps(transposePlane(plain), pxPerMm),
  };
  const found: FoundSeam[] = [];
  const whole = { x0: 0, y0: 0, x1: width / planes.pxPerMm, y1: height / planes.pxPerMm };
  const open: { rect: Rectangle; depth: number }[] = [{ rect: whole, depth: 0 }];
  for (let part = open.pop(); part; part = open.pop()) {
    progress?.(0.7, 'looking for joints');
    const split = splitAtGap(part.rect, gaps, along, across, restLimits) ?? splitAtJoint(part.rect);
    found.push(...split.seams);
    if (part.depth >= deepestCut) continue;
    for (const rect of split.parts) open.push({ rect, depth: part.depth + 1 });
  }
  return found.sort((a, b) => a.line.y1Mm - b.line.y1Mm || a.line.x1Mm - b.line.x1Mm);

  function splitAtJoint(rect: Rectangle): GapSplit {
    const seam = strongestOf(along, across, rect, random);
    if (!seam) return { seams: [], parts: [] };
    return { seams: [seam], parts: partsBeside(rect, seam.kind, seam.line) };
  }
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
  const r = surerLine(along, cellsOf(along, rect, 'rip'), random);
  const c = surerLine(across, cellsOf(across, rect, 'crosscut'), random);
  if (r && (!c || r.weakestQuarter >= c.weakestQuarter)) {
    const [y1, y2] = ends(along, r, rect.x0, rect.x1);
    return { kind: 'rip', p: r.p, line: { x1Mm: rect.x0, y1Mm: y1, x2Mm: rect.x1, y2Mm: y2 } };
  }
  if (!c) return null;
  const [x1, x2] = ends(across, c, rect.y0, rect.y1);
  return { kind: 'crosscut', p: c.p, line: { x1Mm: x1, y1Mm: rect.y0, x2Mm: x2, y2Mm: rect.y1 } };
}

/**
 * Nearly parallel lines first; all tilts only where none of those is a seam (`boardP` is the law of
 * the better of the two looks).
 */
function surerLine(maps: SeamMaps, region: CellRegion, random: RandomSource): StrongestLine | null {
  for (const tiltRad of [usualTiltRad, maxTiltRad]) {
    const line = strongestLine(maps, region, tiltRad, random);
    if (line && line.p <= seamP) return line;
  }
  return null;
}

/** Where the line meets the two ends of its stretch, mm across. */
function ends(maps: SeamMaps, line: StrongestLine, x0: number, x1: number): [number, number] {
  const middleMm = ((line.region.col0 + line.region.col1) / 2) * maps.columnMm;
  const y = (line.row + 0.5) / maps.rowsPerMm;
  const perMm = line.slope / maps.columnMm / maps.rowsPerMm;
  return [y + (x0 - middleMm) * perMm, y + (x1 - middleMm) * perMm];
}
