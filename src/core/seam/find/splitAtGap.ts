import type { LineMm } from '../../results/scoreResult.js';
import type { FoundSeam } from './foundSeam.js';
import { endsAtCuts, joined, middleOf, restsOf } from './gapRow.js';
import type { OpenGap } from './openGaps.js';
import { partsBeside, type Rectangle } from './rectangle.js';
import { jointsOfRests, type RestJoint, restJoint } from './restJoints.js';
import type { SeamMaps } from './seamMaps.js';

/** Open gaps of both ways, in the frame of their own maps (crosscuts: x and y exchanged). */
export interface PanelGaps {
  readonly rip: readonly OpenGap[];
  readonly crosscut: readonly OpenGap[];
}

/** The rest of a gap's line is a joint when its p is not above this. */
export interface RestLimits {
  /** Beside a gap from cut to cut, which a saw made. */
  readonly atCuts: number;
  /** Beside one that ends within the board: it may be a crack, a resin streak, the edge of a knot. */
  readonly alone: number;
}

/** What an open gap tells of the rectangle it runs through. */
export interface GapSplit {
  readonly seams: readonly FoundSeam[];
  readonly parts: readonly Rectangle[];
}

/** Gaps this near to one line are one line, mm. */
const collinearMm = 1.5;
const gapP = 1e-6;
/** Half of the widest gap, and the wood beside it that its darkness reaches, mm. */
const gapClearMm = 3;

/**
 * Splits a rectangle along its longest open gap. Where the gap ends before the rectangle does, the
 * cut that made it went on and was glued up: the rest of its line is asked for a joint by itself.
 * Where one rest is a joint the saw went from edge to edge, so the others are too, on the same line,
 * though the photo may not show them. Rips go before crosscuts, as rails run through and end pieces do not.
 *
 * @returns null when no gap that a saw can have made runs inside the rectangle.
 */
export function splitAtGap(
  rect: Rectangle,
  gaps: PanelGaps,
  along: SeamMaps,
  across: SeamMaps,
  limits: RestLimits,
): GapSplit | null {
  for (const kind of ['rip', 'crosscut'] as const) {
    const own = kind === 'rip' ? rect : turned(rect);
    const inside = gaps[kind]
      .filter((gap) => isInside(gap, own))
      .sort((a, b) => b.x2Mm - b.x1Mm - (a.x2Mm - a.x1Mm));
    const other = gaps[kind === 'rip' ? 'crosscut' : 'rip'];
    const maps = kind === 'rip' ? along : across;
    for (const gap of inside) {
      const yAt = lineOf(gap);
      const cut = cutAlong(yAt, own, inside, other, maps, limits);
      if (!cut) continue;
      const seams = cut.map((seam) => ({ ...seam, kind, line: panelLine(seam.line, kind) }));
      const whole = { x1Mm: own.x0, y1Mm: yAt(own.x0), x2Mm: own.x1, y2Mm: yAt(own.x1) };
      return { seams, parts: partsBeside(rect, kind, panelLine(whole, kind), gapClearMm) };
    }
  }
  return null;
}

/**
 * The gaps and joints on one line, in the frame of the maps.
 *
 * @param inside the rectangle's gaps along the line's way. @param other the gaps of the other way.
 * @returns null when no gap on it is a saw's.
 */
function cutAlong(
  yAt: (xMm: number) => number,
  own: Rectangle,
  inside: readonly OpenGap[],
  other: readonly OpenGap[],
  maps: SeamMaps,
  limits: RestLimits,
): Omit<FoundSeam, 'kind'>[] | null {
  const row = inside
    .filter((gap) => Math.abs(yAt((gap.x1Mm + gap.x2Mm) / 2) - middleOf(gap)) <= collinearMm)
    .sort((a, b) => a.x1Mm - b.x1Mm);
  const atCuts = joined(row, own, () => false).some((gap) => endsAtCuts(gap, own, other));
  const least = atCuts ? limits.atCuts : limits.alone;
  const asked = new Map<number, RestJoint | null>();
  const jointOf = ([x0, x1]: readonly [number, number]) => {
    // What lies between two gaps is asked for once more when it is no joint of theirs.
    const known = asked.get(x0);
    const joint = known === undefined ? restJoint(maps, { ...own, x0, x1 }, yAt) : known;
    asked.set(x0, joint);
    return joint;
  };
  const shows = (joint: RestJoint | null) => joint !== null && joint.p <= least;
  const open = joined(row, own, (stretch) => shows(jointOf(stretch)));
  const rests = restsOf(open, own).map(jointOf);
  if (!rests.some(shows) && !atCuts) return null;
  return [...open.map((line) => ({ p: gapP, line })), ...jointsOfRests(rests, yAt, least)];
}

const turned = ({ x0, y0, x1, y1 }: Rectangle): Rectangle => ({ x0: y0, y0: x0, x1: y1, y1: x1 });

function panelLine({ x1Mm, y1Mm, x2Mm, y2Mm }: LineMm, kind: 'rip' | 'crosscut'): LineMm {
  return kind === 'rip'
    ? { x1Mm, y1Mm, x2Mm, y2Mm }
    : { x1Mm: y1Mm, y1Mm: x1Mm, x2Mm: y2Mm, y2Mm: x2Mm };
}

/** Whether a gap runs through a rectangle, not along its edge. */
function isInside(gap: OpenGap, { x0, y0, x1, y1 }: Rectangle): boolean {
  const [x, y] = [(gap.x1Mm + gap.x2Mm) / 2, middleOf(gap)];
  return x > x0 && x < x1 && y > y0 + gapClearMm && y < y1 - gapClearMm;
}

function lineOf(gap: OpenGap): (xMm: number) => number {
  const slope = (gap.y2Mm - gap.y1Mm) / (gap.x2Mm - gap.x1Mm);
  return (xMm) => gap.y1Mm + slope * (xMm - gap.x1Mm);
}
