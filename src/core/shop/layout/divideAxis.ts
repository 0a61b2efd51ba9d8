import type Fraction from 'fraction.js';
import { SeamgrainError } from '../../errors.js';
import { lengthWords } from '../../units/lengthWords.js';

/** A stretch of the panel along x or y, exact millimetres from the upper left corner. */
export interface Span {
  readonly from: Fraction;
  readonly to: Fraction;
}

/** One saw cut across an axis: the band that turns to dust, and the side whose size it protects. */
export interface KerfBand extends Span {
  readonly keeps: 'before' | 'after';
}

/** An axis cut up: the wanted spans, what is left before, between and after them, the kerfs. */
export interface DividedAxis {
  readonly before: Span;
  /** Between wanted span i and i + 1; null where one cut parts the two. */
  readonly between: readonly (Span | null)[];
  readonly after: Span;
  readonly cuts: readonly KerfBand[];
}

/**
 * Cuts an axis so that the wanted spans keep their full size; every kerf falls outside them.
 * @param total length of the axis, mm
 * @param wanted spans to keep, in order
 * @param kerf saw cut, mm
 * @param restLoses what each remaining piece loses afterwards at each sawn edge (dressing), mm
 * @param words how to name the axis in an error
 * @throws SeamgrainError `cannotDo` when the spans and their kerfs do not fit, saying by how much
 */
export function divideAxis(
  total: Fraction,
  wanted: readonly Span[],
  kerf: Fraction,
  restLoses: Fraction,
  words: AxisWords,
): DividedAxis {
  const first = wanted[0]!;
  const last = wanted[wanted.length - 1]!;
  const edge = kerf.add(restLoses);
  demandRoom(first.from.sub(edge), words.start, words);
  demandRoom(total.sub(last.to).sub(edge), words.end, words);
  const cuts: KerfBand[] = [{ from: first.from.sub(kerf), to: first.from, keeps: 'after' }];
  const between: (Span | null)[] = [];
  wanted.slice(1).forEach((next, index) => {
    const { to } = wanted[index]!;
    const room = next.from.sub(to);
    if (room.equals(kerf)) {
      between.push(null);
      cuts.push({ from: to, to: next.from, keeps: 'after' });
      return;
    }
    demandRoom(room.sub(edge.mul(2)), `between ${words.item} ${index + 1} and ${index + 2}`, words);
    between.push({ from: to.add(kerf), to: next.from.sub(kerf) });
    cuts.push({ from: to, to: to.add(kerf), keeps: 'before' });
    cuts.push({ from: next.from.sub(kerf), to: next.from, keeps: 'after' });
  });
  cuts.push({ from: last.to, to: last.to.add(kerf), keeps: 'before' });
  return {
    before: { from: total.mul(0), to: first.from.sub(kerf) },
    between,
    after: { from: last.to.add(kerf), to: total },
    cuts,
  };
}

/** How an axis is spoken of in an error. */
export interface AxisWords {
  /** Such as `above the front`. */
  readonly start: string;
  readonly end: string;
  readonly item: string;
  readonly remedy: string;
}

function demandRoom(room: Fraction, where: string, words: AxisWords): void {
  if (room.compare(0) > 0) return;
  const short = room.neg().valueOf();
  const problem =
    short === 0
      ? `nothing is left ${where} after the saw and the plane`
      : `${lengthWords(short)} too little wood ${where} for the saw and the plane`;
  throw new SeamgrainError('cannotDo', problem, words.remedy);
}
