import type { LineMm } from '../../results/scoreResult.js';
import type { FoundSeam } from './foundSeam.js';
import { lineNear } from './lineNear.js';
import type { OpenGap } from './openGaps.js';
import { cellsOf, partsBeside, type Rectangle } from './rectangle.js';
import type { SeamMaps } from './seamMaps.js';

/** Open gaps of both ways, in the frame of their own maps (crosscuts: x and y exchanged). */
export interface PanelGaps {
  readonly rip: readonly OpenGap[];
  readonly crosscut: readonly OpenGap[];
}

/** What an open gap tells of the rectangle it runs through. */
export interface GapSplit {
  readonly seams: readonly FoundSeam[];
  readonly parts: readonly Rectangle[];
}

/** Gaps this near to one line are one line, mm. */
const collinearMm = 1.5;
const shortestEndMm = 20;
/** A gap that ends this near to one of the other way ends at it, mm. */
const meetingMm = 6;
const gapP = 1e-6;
/** Half of the widest gap, and the wood beside it that its darkness reaches, mm. */
const gapClearMm = 3;

/**
 * Splits a rectangle along its longest open gap. Where the gap ends before the rectangle does, the
 * cut that made it went on and was glued up: the rest of its line is asked for a joint by itself.
 * Where one rest is a joint the saw went from edge to edge, so the others are too, on the same line,
 * though the photo may not show them. Rips go before crosscuts, as rails run through and end pieces do not.
 *
 * @param least a rest of the line is a joint when its p is not above this.
 * @returns null when no gap that a saw can have made runs inside the rectangle.
 */
export function splitAtGap(
  rect: Rectangle,
  gaps: PanelGaps,
  along: SeamMaps,
  across: SeamMaps,
  least: number,
): GapSplit | null {
  for (const kind of ['rip', 'crosscut'] as const) {
    const own = kind === 'rip' ? rect : turned(rect);
    const inside = gaps[kind].filter((gap) => isInside(gap, own));
    if (inside.length === 0) continue;
    const longest = inside.reduce((a, b) => (b.x2Mm - b.x1Mm > a.x2Mm - a.x1Mm ? b : a));
    const yAt = lineOf(longest);
    const row = inside
      .filter((gap) => Math.abs(yAt((gap.x1Mm + gap.x2Mm) / 2) - middleOf(gap)) <= collinearMm)
      .sort((a, b) => a.x1Mm - b.x1Mm);
    const maps = kind === 'rip' ? along : across;
    const asked = new Map<number, RestJoint | null>();
    const jointOf = ([x0, x1]: readonly [number, number]) => {
      // What lies between two gaps is asked for once more when it is no joint of theirs.
      const known = asked.get(x0);
      const joint = known === undefined ? jointAlong(maps, { ...own, x0, x1 }, yAt) : known;
      asked.set(x0, joint);
      return joint;
    };
    const shows = (joint: RestJoint | null) => joint !== null && joint.p <= least;
    const open = joined(row, own, (stretch) => shows(jointOf(stretch)));
    const rests = restsOf(open, own).map(jointOf);
    const other = gaps[kind === 'rip' ? 'crosscut' : 'rip'];
    if (!rests.some(shows) && !open.some((gap) => endsAtCuts(gap, own, other))) continue;
    const shown = rests.filter((joint): joint is RestJoint => shows(joint));
    const implied = shown.length === 0 ? [] : rests.filter((joint) => joint && !shows(joint));
    const shiftMm = shown.reduce((sum, joint) => sum + joint.shiftMm, 0) / shown.length;
    const lineOfRest = ({ x1Mm, x2Mm }: RestJoint, shift: number) =>
      panelLine({ x1Mm, y1Mm: yAt(x1Mm) + shift, x2Mm, y2Mm: yAt(x2Mm) + shift }, kind);
    const seams: FoundSeam[] = [
      ...open.map((gap) => ({ kind, p: gapP, line: panelLine(gap, kind) })),
      ...shown.map((joint) => ({ kind, p: joint.p, line: lineOfRest(joint, joint.shiftMm) })),
      ...implied.flatMap((joint) =>
        joint ? [{ kind, p: joint.p, line: lineOfRest(joint, shiftMm), implied: true }] : [],
      ),
    ];
    const whole = { x1Mm: own.x0, y1Mm: yAt(own.x0), x2Mm: own.x1, y2Mm: yAt(own.x1) };
    return { seams, parts: partsBeside(rect, kind, panelLine(whole, kind), gapClearMm) };
  }
  return null;
}

const turned = ({ x0, y0, x1, y1 }: Rectangle): Rectangle => ({ x0: y0, y0: x0, x1: y1, y1: x1 });
const middleOf = (gap: OpenGap) => (gap.y1Mm + gap.y2Mm) / 2;

function panelLine(gap: OpenGap, kind: 'rip' | 'crosscut'): LineMm {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = gap;
  return kind === 'rip'
    ? { x1Mm, y1Mm, x2Mm, y2Mm }
    : { x1Mm: y1Mm, y1Mm: x1Mm, x2Mm: y2Mm, y2Mm: x2Mm };
}

/** Whether a gap runs through a rectangle, not along its edge. */
function isInside(gap: OpenGap, { x0, y0, x1, y1 }: Rectangle): boolean {
  const [x, y] = [(gap.x1Mm + gap.x2Mm) / 2, middleOf(gap)];
  return x > x0 && x < x1 && y > y0 + gapClearMm && y < y1 - gapClearMm;
}

/**
 * Whether a gap runs from cut to cut: from an edge, or a gap of the other way, to another. What ends
 * within the board at nothing is a crack.
 */
function endsAtCuts(gap: OpenGap, { x0, x1 }: Rectangle, other: readonly OpenGap[]): boolean {
  const meets = (xMm: number, yMm: number) =>
    other.some(
      (cut) =>
        Math.abs(middleOf(cut) - xMm) <= meetingMm &&
        yMm > cut.x1Mm - meetingMm &&
        yMm < cut.x2Mm + meetingMm,
    );
  return (
    (gap.x1Mm - x0 < shortestEndMm || meets(gap.x1Mm, gap.y1Mm)) &&
    (x1 - gap.x2Mm < shortestEndMm || meets(gap.x2Mm, gap.y2Mm))
  );
}

function lineOf(gap: OpenGap): (xMm: number) => number {
  const slope = (gap.y2Mm - gap.y1Mm) / (gap.x2Mm - gap.x1Mm);
  return (xMm) => gap.y1Mm + slope * (xMm - gap.x1Mm);
}

/**
 * Gaps of one line put together where what lies between them is too short to ask or a joint itself,
 * and run out to the rectangle's edge where little is left.
 */
function joined(
  row: readonly OpenGap[],
  rect: Rectangle,
  isJoint: (stretch: readonly [number, number]) => boolean,
): OpenGap[] {
  const out: OpenGap[] = [];
  for (const gap of row) {
    const last = out.pop();
    if (!last) {
      out.push(gap.x1Mm - rect.x0 < shortestEndMm ? { ...gap, x1Mm: rect.x0 } : gap);
      continue;
    }
    const between = [last.x2Mm, gap.x1Mm] as const;
    const one = between[1] - between[0] < shortestEndMm || isJoint(between);
    if (one) out.push({ ...last, x2Mm: gap.x2Mm, y2Mm: gap.y2Mm });
    else out.push(last, gap);
  }
  const last = out.pop();
  if (last) out.push(rect.x1 - last.x2Mm < shortestEndMm ? { ...last, x2Mm: rect.x1 } : last);
  return out;
}

/** The stretches of a line that its gaps leave, from one side of the rectangle to the other. */
function restsOf(row: readonly OpenGap[], rect: Rectangle): [number, number][] {
  const starts = [rect.x0, ...row.map((gap) => gap.x2Mm)];
  const ends = [...row.map((gap) => gap.x1Mm), rect.x1];
  return starts
    .map((start, k): [number, number] => [start, ends[k]])
    .filter(([start, end]) => end - start >= shortestEndMm);
}

/** The strongest line near a rest of a gap's line. */
interface RestJoint {
  readonly p: number;
  readonly x1Mm: number;
  readonly x2Mm: number;
  /** Off the gap's own line, mm. */
  readonly shiftMm: number;
}

function jointAlong(
  maps: SeamMaps,
  rect: Rectangle,
  yAt: (xMm: number) => number,
): RestJoint | null {
  const region = cellsOf(maps, rect, 'rip');
  const middleMm = ((region.col0 + region.col1) / 2) * maps.columnMm;
  const slope = (yAt(1) - yAt(0)) * maps.columnMm * maps.rowsPerMm;
  const near = lineNear(maps, region, yAt(middleMm) * maps.rowsPerMm - 0.5, slope);
  if (!near) return null;
  const shiftMm = (near.row + 0.5) / maps.rowsPerMm - yAt(middleMm);
  return { p: near.p, x1Mm: rect.x0, x2Mm: rect.x1, shiftMm };
}
