import type Fraction from 'fraction.js';
import { type AxisWords, divideAxis, type KerfBand, type Span } from './divideAxis.js';
import type { ExactPiece, ExactStrip } from './exactLayout.js';
import type { StripPlan } from './groupStrips.js';
import type { FrontWood } from './layoutInput.js';
import { numberedName } from './numberedName.js';

/** Where a strip stands among the others, for the names of its pieces. */
export interface StripPosition {
  readonly index: number;
  readonly stripCount: number;
  readonly firstFront: number;
  readonly frontCount: number;
}

/**
 * Parts a strip into left end, fronts (dividers between them) and right end.
 * A front of the panel's own wood keeps its full size, the kerfs fall outside it. Where a front
 * of other wood goes in, the end pieces keep theirs and the kerfs fall inside the opening.
 */
export function stripPieces(
  plan: StripPlan,
  length: Fraction,
  kerf: Fraction,
  frontWood: FrontWood,
  position: StripPosition,
): ExactStrip {
  const same = frontWood === 'same';
  const inner = same ? plan.openings : plan.openings.map((span) => shrink(span, kerf));
  const axis = divideAxis(length, inner, kerf, kerf.mul(0), endWords);
  const crosscuts = same ? axis.cuts : axis.cuts.map(flip);
  const make = (name: string, kind: ExactPiece['kind'], x: Span): ExactPiece => ({
    name,
    kind,
    x,
    y: plan.y,
    dressedEdges: ['upper', 'lower'],
  });
  const numbered = (word: string) => numberedName(word, position.index, position.stripCount);
  const fronts = inner.map((x, index) =>
    make(
      numberedName(same ? 'front' : 'cut-out', position.firstFront + index, position.frontCount),
      same ? 'front' : 'cut-out',
      x,
    ),
  );
  const dividerCount = axis.between.filter((span) => span !== null).length;
  let divider = 0;
  const pieces = [make(numbered('left end'), 'end', axis.before)];
  fronts.forEach((front, index) => {
    pieces.push(front);
    const span = axis.between[index];
    if (!span) return;
    const name = numberedName('divider', divider++, dividerCount);
    pieces.push(
      make(position.stripCount === 1 ? name : `${name} of ${numbered('strip')}`, 'divider', span),
    );
  });
  pieces.push(make(numbered('right end'), 'end', axis.after));
  const strip = make(numbered('strip'), 'strip', { from: length.mul(0), to: length });
  return { ...strip, pieces, crosscuts };
}

const endWords: AxisWords = {
  start: 'left of the front',
  end: 'right of the front',
  item: 'fronts',
  remedy:
    'move the front, take a longer panel, or set fronts apart by one kerf (one cut parts them) or by more than two',
};

function shrink(span: Span, kerf: Fraction): Span {
  return { from: span.from.add(kerf), to: span.to.sub(kerf) };
}

function flip(band: KerfBand): KerfBand {
  return { ...band, keeps: band.keeps === 'before' ? 'after' : 'before' };
}
