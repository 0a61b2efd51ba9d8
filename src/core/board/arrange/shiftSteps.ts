/** Steps finer than this are not worth a maker's while on the bench, mm. */
const leastStepMm = 4;
/** At most so many steps either way from lying centred: the table grows with them. */
const mostStepsEachWay = 3;
/** A board that may move by less than this does not move, mm. */
const leastSpareMm = 8;

/** How far and in what steps boards may be slid lengthwise. */
export interface ShiftSteps {
  readonly panelLengthMm: number;
  readonly stepMm: number;
  /** Per board, steps to either side of lying centred. */
  readonly mostSteps: readonly number[];
}

/**
 * Divides the length that each board has to spare into equal steps about its centred place.
 *
 * The panel is as long as the shortest board less `spareMm`; a longer board may be slid further.
 *
 * @param lengthsMm of the boards. @param spareMm 0: boards are not slid at all.
 */
export function shiftSteps(lengthsMm: readonly number[], spareMm: number): ShiftSteps {
  const panelLengthMm = Math.min(...lengthsMm) - spareMm;
  const still = { panelLengthMm, stepMm: 1, mostSteps: lengthsMm.map(() => 0) };
  if (spareMm < leastSpareMm) return still;
  const each = Math.max(1, Math.min(mostStepsEachWay, Math.floor(spareMm / 2 / leastStepMm)));
  const stepMm = spareMm / 2 / each;
  const mostSteps = lengthsMm.map((mm) =>
    Math.min(2 * mostStepsEachWay, Math.floor((mm - panelLengthMm) / 2 / stepMm + 1e-9)),
  );
  return { panelLengthMm, stepMm, mostSteps };
}
