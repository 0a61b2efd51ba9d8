import type { ForecastDisagreement } from '../results/forecastResult.js';
import type { Cue } from '../results/visibilityResult.js';
import type { RipCost } from './ripCurve.js';

/** Picture and angle differ by more than this factor. */
const muchFactor = 2;
/** Below this on both sides nobody would see a difference. */
const leastV = 1;
/** Shorter stretches are chance, points of the curve. */
const leastPoints = 3;

/** Where picture and closed form disagree by much, and which cue makes the difference. */
export function disagreements(curve: readonly RipCost[]): ForecastDisagreement[] {
  const found: ForecastDisagreement[] = [];
  let run: RipCost[] = [];
  const close = () => {
    if (run.length >= leastPoints) found.push(describe(run));
    run = [];
  };
  for (const point of curve) {
    const way = disagreement(point);
    if (run.length > 0 && way !== disagreement(run[0])) close();
    if (way !== 0) run.push(point);
  }
  close();
  return found;
}

/** +1: the picture says much more, -1: much less, 0: about the same. */
function disagreement({ v, vByAngle }: RipCost): -1 | 0 | 1 {
  if (v === null || vByAngle === null || Math.max(v, vByAngle) < leastV) return 0;
  if (v > muchFactor * vByAngle) return 1;
  return vByAngle > muchFactor * v ? -1 : 0;
}

function describe(run: readonly RipCost[]): ForecastDisagreement {
  const mean = (pick: (point: RipCost) => number | null) =>
    run.reduce((sum, point) => sum + (pick(point) ?? 0), 0) / run.length;
  const more = disagreement(run[0]) > 0;
  const cue = more ? mostCommonCue(run) : null;
  return {
    fromYMm: run[0].yMm,
    toYMm: run[run.length - 1].yMm,
    v: mean(({ v }) => v),
    vByAngle: mean(({ vByAngle }) => vByAngle),
    cue,
    why: cue ? whyMore[cue] : whyLess,
  };
}

/** The closed form knows the break of even lines only. */
const whyMore: Readonly<Record<Cue, string>> = {
  break: 'the lines within the cut are not as even as beside it',
  direction: 'the grain turns within the width of the cut',
  spacing: 'the lines change their spacing within the width of the cut',
  colour: 'the colour changes within the width of the cut',
  glueLine:
    'a ring line is cut in half lengthwise, and what is left of it is a thin line along the joint',
};
const whyLess =
  "the lines meet again better than their angle and spacing foretell, or the board's own figure hides the step";

function mostCommonCue(run: readonly RipCost[]): Cue | null {
  const counts = new Map<Cue, number>();
  for (const { cue, v } of run) if (cue) counts.set(cue, (counts.get(cue) ?? 0) + (v ?? 0) ** 3);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}
