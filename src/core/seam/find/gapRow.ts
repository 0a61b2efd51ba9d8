import type { OpenGap } from './openGaps.js';
import type { Rectangle } from './rectangle.js';

/** A rest of a line shorter than this is not asked for a joint, mm. */
const shortestEndMm = 20;
/** A gap that ends this near to one of the other way ends at it, mm. */
const meetingMm = 6;

export const middleOf = (gap: OpenGap) => (gap.y1Mm + gap.y2Mm) / 2;

/**
 * Whether a gap runs from cut to cut: from an edge, or a gap of the other way, to another. What ends
 * within the board at nothing is a crack.
 */
export function endsAtCuts(
  gap: OpenGap,
  { x0, x1 }: Rectangle,
  other: readonly OpenGap[],
): boolean {
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

/**
 * Gaps of one line put together where what lies between them is too short to ask or a joint itself,
 * and run out to the rectangle's edge where little is left.
 */
export function joined(
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
export function restsOf(row: readonly OpenGap[], rect: Rectangle): [number, number][] {
  const starts = [rect.x0, ...row.map((gap) => gap.x2Mm)];
  const ends = [...row.map((gap) => gap.x1Mm), rect.x1];
  return starts
    .map((start, k): [number, number] => [start, ends[k]])
    .filter(([start, end]) => end - start >= shortestEndMm);
}
