import type Fraction from 'fraction.js';
import { exactMm } from '../../units/exactMm.js';
import type { ExactLayout } from './exactLayout.js';

/** What is left beyond the need, in total and on each side, mm. */
export interface SpareWood {
  readonly widthMm: number;
  readonly lengthMm: number;
  readonly upperMm: number;
  readonly lowerMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
}

/**
 * Panel minus need. Without a wanted face, all that is left of the outer rails and end pieces is
 * spare. With one, the spare is split evenly between the two sides, as far as each side has it.
 */
export function spareWood(layout: ExactLayout): SpareWood {
  const { courses, strips, dress, needs, length, width, face } = layout;
  const first = courses[0]!;
  const last = courses[courses.length - 1]!;
  const upper = first.y.to.sub(first.y.from).sub(dress);
  const lower = last.y.to.sub(last.y.from).sub(dress);
  const left = least(strips.map(({ pieces }) => pieces[0]!.x.to));
  const right = least(strips.map(({ pieces }) => length.sub(pieces[pieces.length - 1]!.x.from)));
  const across = width.sub(needs.width);
  const along = length.sub(needs.length);
  const [upperSpare, lowerSpare] = face ? split(across, upper, lower) : [upper, lower];
  const [leftSpare, rightSpare] = face ? split(along, left, right) : [left, right];
  return {
    widthMm: across.valueOf(),
    lengthMm: along.valueOf(),
    upperMm: upperSpare.valueOf(),
    lowerMm: lowerSpare.valueOf(),
    leftMm: leftSpare.valueOf(),
    rightMm: rightSpare.valueOf(),
  };
}

function split(total: Fraction, first: Fraction, second: Fraction): [Fraction, Fraction] {
  const half = total.mul(exactMm(0.5));
  const floor = total.sub(second);
  const atLeast = half.compare(floor) < 0 ? floor : half;
  const share = atLeast.compare(first) > 0 ? first : atLeast;
  return [share, total.sub(share)];
}

function least(values: readonly Fraction[]): Fraction {
  return values.reduce((a, b) => (a.compare(b) <= 0 ? a : b));
}
