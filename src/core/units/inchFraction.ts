import { mmPerInch } from './mmPerInch.js';

/** A length rounded to a maker's rule, and what the rounding cost. */
export interface InchFraction {
  /** Whole inches, carrying no sign. */
  readonly whole: number;
  /** Reduced fraction; 0/1 when whole. */
  readonly numerator: number;
  readonly denominator: number;
  readonly negative: boolean;
  /** The rounded length. */
  readonly mm: number;
  /** Rounded minus true. */
  readonly errorMm: number;
}

/**
 * Rounds a length to the nearest, next lower or next higher mark of an inch rule.
 * @param mm length, mm
 * @param denominator marks per inch, 16 (default), 32, 64, …
 * @param direction `"nearest"` (default), `"down"` (towards minus infinity) or `"up"`
 */
export function inchFraction(
  mm: number,
  denominator = 16,
  direction: 'nearest' | 'down' | 'up' = 'nearest',
): InchFraction {
  const exactMarks = (mm / mmPerInch) * denominator;
  // A length that is on a mark must stay there although the division is a double.
  const onMark = Math.abs(exactMarks - Math.round(exactMarks)) < 1e-7;
  const marks =
    onMark || direction === 'nearest'
      ? Math.round(exactMarks)
      : direction === 'down'
        ? Math.floor(exactMarks)
        : Math.ceil(exactMarks);
  const magnitude = Math.abs(marks);
  const rest = magnitude % denominator;
  const divisor = greatestCommonDivisor(rest, denominator);
  const roundedMm = (marks * mmPerInch) / denominator;
  return {
    whole: Math.floor(magnitude / denominator),
    numerator: rest / divisor,
    denominator: denominator / divisor,
    negative: marks < 0,
    mm: roundedMm,
    errorMm: onMark ? 0 : roundedMm - mm,
  };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
