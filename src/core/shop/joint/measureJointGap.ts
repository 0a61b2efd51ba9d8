import { SeamgrainError } from '../../errors.js';
import type { Plane } from '../../image/plane.js';
import type { JointGapReading } from '../../results/dryClampResult.js';
import { crossProfile, type LinePx } from './crossProfile.js';
import { darkLineWidth } from './darkLineWidth.js';
import { resolvedPx } from './resolvedPx.js';

/** How the gap is looked for; mm. */
export interface JointGapOptions {
  /** Stretch of joint that one reading averages. Default 3. */
  readonly stretchMm?: number;
  /** How far the joint may lie from the line given. Default 0.8. */
  readonly searchMm?: number;
  /** Widest gap. Default 2. */
  readonly widestMm?: number;
}

/** Readings along the joint, and what this photo can tell at all. */
export interface JointGap {
  readonly readings: readonly JointGapReading[];
  readonly limitMm: number;
}

/** Joints in which the wood's own lines alone may give a reading, share. */
const falseAlarms = 0.05;
/** Narrower lines are guesses, whatever the wood: drawn joints at 6 to 30 px/mm (tests) show it. */
const leastWidthPx = 1.5;
/** Standard error of a width from pixels and blur alone, px; from the same drawn joints. */
const pixelSePx = 0.4;
/** Light from inside a gap that is too narrow to show its floor: 0 black to 0.3. Assumption. */
const assumedFloor = 0.12;
const floorSpread = 0.1;

/**
 * The gap along a dry-clamped joint, from a close, square-on photo: width of the dark line.
 * The same search on parallel lines in the wood beside the joint says how dark a line this board
 * draws by itself; a gap is told only above what 5 % of joints would show from those lines alone.
 * @param plane linear luminance, see `linearLuminancePlane`
 * @param line the joint from end to end, px
 * @param pxPerMm scale
 * @throws SeamgrainError `cannotDo` when the line is too short or too near the photo's edge
 */
export function measureJointGap(
  plane: Plane,
  line: LinePx,
  pxPerMm: number,
  options: JointGapOptions = {},
): JointGap {
  const { stretchMm = 3, searchMm = 0.8, widestMm = 2 } = options;
  const lengthPx = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  const stretchPx = stretchMm * pxPerMm;
  const stations = Math.floor(lengthPx / stretchPx);
  if (stations < 4) {
    throw new SeamgrainError(
      'cannotDo',
      'the joint in this photo is too short to measure',
      `show at least ${4 * stretchMm} mm of it`,
    );
  }
  const stepPx = 0.5;
  const reachPx = 2.2 * widestMm * pxPerMm;
  const widthsAt = (offsetPx: number) =>
    Array.from({ length: stations }, (_, index) => {
      const along = (index + 0.5) * stretchPx;
      const profile = crossProfile(plane, line, along, stretchPx, offsetPx, reachPx, stepPx);
      return darkLineWidth(profile, stepPx, searchMm * pxPerMm, widestMm * pxPerMm);
    });
  const joint = widthsAt(0);
  const shams = shamOffsets(plane, line, reachPx, searchMm * pxPerMm).flatMap(widthsAt);
  if (shams.length === 0) {
    throw new SeamgrainError(
      'cannotDo',
      'there is too little wood beside the joint in this photo',
      `leave ${Math.ceil((3 * reachPx) / pxPerMm)} mm of wood on one side of it`,
    );
  }
  const resolved = joint.filter(({ halfWidthPx }) => halfWidthPx >= resolvedPx);
  const floor =
    resolved.length > 0
      ? quantile(
          resolved.map(({ floorRatio }) => floorRatio),
          0.5,
        )
      : assumedFloor;
  const widthMm = (blackWidthPx: number, ratio: number) => blackWidthPx / (1 - ratio) / pxPerMm;
  const shamWidths = shams.map(({ blackWidthPx }) => widthMm(blackWidthPx, floor));
  const limitMm = Math.max(
    quantile(shamWidths, 1 - falseAlarms / stations),
    leastWidthPx / pxPerMm,
  );
  const noiseMm = (quantile(shamWidths, 0.84) - quantile(shamWidths, 0.16)) / 2;
  const readings = joint.map((dark, index): JointGapReading => {
    const isResolved = dark.halfWidthPx >= resolvedPx;
    const gapMm = widthMm(dark.blackWidthPx, isResolved ? Math.min(0.6, dark.floorRatio) : floor);
    const atMm = ((index + 0.5) * stretchPx) / pxPerMm;
    if (gapMm < limitMm) return { atMm, gapMm: null, gapSeMm: null, atMostMm: limitMm };
    const spread = resolved.length > 0 ? 0.03 : floorSpread;
    const gapSeMm = Math.hypot(noiseMm, gapMm * spread, pixelSePx / pxPerMm);
    return { atMm, gapMm, gapSeMm, atMostMm: gapMm + 2 * gapSeMm };
  });
  return { readings, limitMm };
}

/** Parallels in the wood on both sides whose profiles neither leave the photo nor reach the joint. */
function shamOffsets(plane: Plane, line: LinePx, reachPx: number, searchPx: number): number[] {
  const clear = reachPx + searchPx;
  const length = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  const normal = { x: -(line.y2 - line.y1) / length, y: (line.x2 - line.x1) / length };
  const ends = [
    { x: line.x1, y: line.y1 },
    { x: line.x2, y: line.y2 },
  ];
  const fits = (offset: number) =>
    ends.every(({ x, y }) =>
      [offset - reachPx, offset + reachPx].every((across) => {
        const px = x + across * normal.x;
        const py = y + across * normal.y;
        return px >= -1 && py >= -1 && px <= plane.width + 1 && py <= plane.height + 1;
      }),
    );
  const steps = [1, 1.35, 1.7, 2.05, 2.4];
  return steps.flatMap((step) => [step * clear, -step * clear]).filter(fits);
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}
