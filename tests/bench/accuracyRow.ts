/** One line of the accuracy table. */
export interface AccuracyRow {
  readonly section: string;
  readonly what: string;
  /** Cells, seams, windows or panels that the figure rests on. */
  readonly n: number;
  /** The figure and its interval, already in the unit that `what` names; NaN when n is 0. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly digits: number;
  /** What was asked, and whether the figure itself (not its interval) keeps it. */
  readonly target?: { readonly text: string; readonly met: boolean };
}

/** A figure must lie between these; either may be missing. */
export interface Target {
  readonly least?: number;
  readonly most?: number;
}

interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Puts a figure beside its target. */
export function accuracyRow(
  section: string,
  what: string,
  n: number,
  interval: Interval,
  digits: number,
  target?: Target,
): AccuracyRow {
  const row = { section, what, n, ...interval, digits };
  if (!target) return row;
  const { least, most } = target;
  const text =
    least !== undefined && most !== undefined
      ? `${least} to ${most}`
      : least !== undefined
        ? `at least ${least}`
        : `at most ${most}`;
  const met =
    interval.value >= (least ?? Number.NEGATIVE_INFINITY) &&
    interval.value <= (most ?? Number.POSITIVE_INFINITY);
  return { ...row, target: { text, met } };
}
