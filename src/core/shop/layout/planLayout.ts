import type Fraction from 'fraction.js';
import { SeamgrainError } from '../../errors.js';
import { exactMm } from '../../units/exactMm.js';
import { checkLayoutInput } from './checkLayoutInput.js';
import { demandPanel } from './demandPanel.js';
import { type AxisWords, divideAxis, type Span } from './divideAxis.js';
import type { ExactLayout, ExactPiece, ExactStrip, LongEdge } from './exactLayout.js';
import { groupStrips, type StripPlan } from './groupStrips.js';
import type { LayoutInput } from './layoutInput.js';
import { railName } from './railName.js';
import { stripPieces } from './stripPieces.js';

/**
 * Lays rails, strips, ends and fronts out on the blank, exactly.
 * Each rip takes kerf + 2 dressings across the grain: the strip keeps front + 2 trims after
 * dressing, and the front's wood is the wood that lay at its place.
 * @throws SeamgrainError `wrongUsage` for impossible figures, `cannotDo` when the panel is too small
 */
export function planLayout(input: LayoutInput): ExactLayout {
  checkLayoutInput(input);
  const amounts = exactAmounts(input);
  const { length, width, kerf, dress, trim, trimEnds, frontWood } = amounts;
  const plans = groupStrips(input.fronts, { dress, trim, trimEnds });
  const needs = leastBlank(plans, input, amounts);
  demandPanel(input.panel, needs);
  const axis = divideAxis(
    width,
    plans.map((plan) => plan.y),
    kerf,
    dress,
    railWords,
  );
  const strips = layStrips(plans, length, kerf, frontWood);
  const railSpans = [axis.before, ...axis.between, axis.after];
  const railCount = railSpans.filter((span) => span !== null).length;
  let rail = 0;
  const courses = railSpans.flatMap((span, index): (ExactPiece | ExactStrip)[] => {
    const own = span
      ? [railPiece(railName(rail++, railCount), span, length, index, plans.length)]
      : [];
    return index < strips.length ? [...own, strips[index]!] : own;
  });
  return { ...amounts, courses, strips, rips: axis.cuts, needs, face: input.face ?? null };
}

type Amounts = ReturnType<typeof exactAmounts>;

function exactAmounts(input: LayoutInput) {
  return {
    length: exactMm(input.panel.lengthMm),
    width: exactMm(input.panel.widthMm),
    kerf: exactMm(input.kerfMm ?? 3.175),
    dress: exactMm(input.dressMm ?? 0),
    trim: exactMm(input.trimMm ?? 0),
    trimEnds: exactMm(input.trimEndsMm ?? input.trimMm ?? 0),
    slideLeft: exactMm(input.endSlideMm?.leftMm ?? 0),
    slideRight: exactMm(input.endSlideMm?.rightMm ?? 0),
    frontWood: input.frontWood ?? 'same',
  } as const;
}

function layStrips(
  plans: readonly StripPlan[],
  length: Fraction,
  kerf: Fraction,
  frontWood: Amounts['frontWood'],
): ExactStrip[] {
  const frontCount = plans.reduce((sum, plan) => sum + plan.openings.length, 0);
  let firstFront = 0;
  return plans.map((plan, index) => {
    const position = { index, stripCount: plans.length, firstFront, frontCount };
    firstFront += plan.openings.length;
    return stripPieces(plan, length, kerf, frontWood, position);
  });
}

function railPiece(
  name: string,
  y: Span,
  length: Fraction,
  index: number,
  last: number,
): ExactPiece {
  const edges: LongEdge[] =
    index === 0 ? ['lower'] : index === last ? ['upper'] : ['upper', 'lower'];
  return { name, kind: 'rail', x: { from: length.mul(0), to: length }, y, dressedEdges: edges };
}

/**
 * Without a wanted face: the fronts with what lies between them, and what saw and plane take.
 * With one: the face and what saw, plane and slide take.
 */
function leastBlank(plans: readonly StripPlan[], input: LayoutInput, amounts: Amounts) {
  const { kerf, dress, slideLeft, slideRight, frontWood } = amounts;
  const edge = kerf.add(dress);
  const outer = frontWood === 'same' ? kerf : kerf.mul(0);
  const across = spanOf(plans.map((plan) => plan.y)).add(edge.mul(2));
  const along = plans
    .map((plan) => spanOf(plan.openings).add(outer.mul(2)))
    .reduce((a, b) => (a.compare(b) >= 0 ? a : b));
  if (!input.face) return { width: across, length: along };
  const rips = plans.reduce((count, plan, index) => {
    const next = plans[index + 1];
    return count + (next?.y.from.sub(plan.y.to).equals(kerf) ? 1 : 2);
  }, 0);
  const width = exactMm(input.face.widthMm).add(kerf.add(dress.mul(2)).mul(rips));
  const length = exactMm(input.face.lengthMm).add(slideLeft).add(slideRight);
  if (width.compare(across) < 0 || length.compare(along) < 0) {
    throw new SeamgrainError(
      'cannotDo',
      'the fronts and their cuts do not fit into the finished face',
      'make the face larger or the fronts smaller',
    );
  }
  return { width, length };
}

function spanOf(spans: readonly Span[]): Fraction {
  return spans[spans.length - 1]!.to.sub(spans[0]!.from);
}

const railWords: AxisWords = {
  start: 'above the front',
  end: 'below the front',
  item: 'strips',
  remedy:
    'move the front, take a wider panel, or set strips apart by one kerf and two dressings (one rip parts them) or by more than two',
};
