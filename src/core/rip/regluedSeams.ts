import type { LineMm, SeamResult } from '../results/scoreResult.js';
import { untoldSeam } from '../results/untoldSeam.js';
import type { VisibilityResult } from '../results/visibilityResult.js';
import type { LineMeasures } from '../seam/lineMeasures.js';
import { visibilityResult, windowsOf } from '../seam/seamResult.js';
import { seamVisibility, vOfSeam } from '../seam/seamVisibility.js';
import { probabilitySeen } from '../visibility/probabilitySeen.js';
import { visibilityWord } from '../visibility/visibilityWord.js';
import type { ForecastLines } from './forecastLines.js';
import { type CutLoss, type PieceSlides, ripLossMm } from './frontCut.js';
import type { FrontSegment } from './frontSegments.js';
import { type PlacementCost, reachOfSegment, type SegmentCost } from './placementCost.js';
import { flushEnds } from './reglueSpecs.js';
import { withLeftOutWindows } from './withLeftOutWindows.js';

/**
 * The joints and reveals of a placement on the panel glued up again, stretch by stretch, as a
 * score would list them.
 *
 * @param revealMm trimmed off the front's edges: reveals are drawn in their middle.
 */
export function regluedSeams(
  lines: ForecastLines,
  placement: PlacementCost,
  loss: CutLoss,
  slides: PieceSlides,
  revealMm: number,
): SeamResult[] {
  const { startMm } = flushEnds(lines.widthMm, slides);
  return placement.segments.map((one) => {
    const { segment } = one;
    const line = regluedLine(placement, segment, loss, slides, startMm, revealMm);
    return {
      ...untoldSeam,
      id: `${segment.piece}, ${segment.edge} edge`,
      line,
      ...seenAlong(lines, placement, one),
      notes: [],
    };
  });
}

function seenAlong(
  lines: ForecastLines,
  { front }: PlacementCost,
  { segment, v, cue }: SegmentCost,
): Pick<SeamResult, 'visibility' | 'windows'> {
  const { kind, glued, etaAMm, etaBMm, slideMm, fromMm, toMm } = segment;
  if (etaAMm === etaBMm && slideMm === 0) {
    return { visibility: { ...pooled(v), vanishesAtMm: null, cue }, windows: [] };
  }
  const cut = kind === 'rip' ? lines.rip : lines.crosscut;
  const part = (line: LineMeasures): LineMeasures => ({
    ...line,
    windows: line.windows
      .filter(({ atMm }) => atMm >= fromMm && atMm <= toMm)
      .map((window) => ({ ...window, atMm: window.atMm - fromMm })),
  });
  const whole = cut.measured(etaAMm, etaBMm, slideMm);
  const seam = part(glued ? whole : unlined(whole));
  const own = cut
    .ownMeasured(etaAMm, etaBMm, reachOfSegment(lines, front, segment))
    .map(part)
    .filter(({ windows }) => windows.length > 0);
  const seen = seamVisibility(seam, own, lines.distanceMm);
  const { vanishesAtMm } = visibilityResult(seen, (mm) => vOfSeam(seam, own, mm));
  const atMm = cut
    .joint(etaAMm, etaBMm, slideMm)
    .atMm.filter((at) => at >= fromMm && at <= toMm)
    .map((at) => at - fromMm);
  const windows = withLeftOutWindows(windowsOf(seam, own, seen), atMm);
  return { visibility: { ...pooled(v), vanishesAtMm, cue }, windows };
}

/** A reveal stays open: a thin line along it is meant to be there. */
function unlined(line: LineMeasures): LineMeasures {
  const windows = line.windows.map((window) => ({ ...window, ridge: { areaMm: 0, peak: 0 } }));
  return { ...line, windows };
}

function pooled(v: number | null): Pick<VisibilityResult, 'v' | 'pSeen' | 'word'> {
  if (v === null) return { v, pSeen: null, word: null };
  return { v, pSeen: probabilitySeen(v), word: visibilityWord(v) };
}

/** Where a joint or reveal lies on the panel glued up again. */
function regluedLine(
  { front }: PlacementCost,
  { piece, edge, kind, fromMm, toMm }: FrontSegment,
  loss: CutLoss,
  slides: PieceSlides,
  startMm: number,
  revealMm: number,
): LineMm {
  const topMm = front.yMm - ripLossMm(loss);
  const bottomMm = topMm + front.heightMm;
  if (kind === 'crosscut') {
    const [pieceEdge, frontEdge] =
      edge === 'left'
        ? [front.xMm - loss.kerfMm + slides.left, front.xMm + revealMm]
        : [
            front.xMm + front.widthMm + loss.kerfMm + slides.right,
            front.xMm + front.widthMm - revealMm,
          ];
    const xMm = (pieceEdge + frontEdge) / 2 - startMm;
    return { x1Mm: xMm, y1Mm: topMm, x2Mm: xMm, y2Mm: bottomMm };
  }
  const moved = piece === 'left end' ? slides.left : piece === 'right end' ? slides.right : 0;
  const sideB = edge === 'upper' ? moved : slides.lower;
  const inset = piece === 'front' ? revealMm / 2 : 0;
  const yMm = edge === 'upper' ? topMm + inset : bottomMm - inset;
  return {
    ...{ x1Mm: Math.max(0, fromMm + sideB - startMm), y1Mm: yMm },
    ...{ x2Mm: toMm + sideB - startMm, y2Mm: yMm },
  };
}
