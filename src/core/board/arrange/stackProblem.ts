/** One possible place of a board in the stack: its number and one of its ways. */
export interface StackProblem {
  readonly boardCount: number;
  /** State to board. */
  readonly boardOf: Int32Array;
  /** Board to its states. */
  readonly statesOf: readonly (readonly number[])[];
  /** Cost of a joint, `cost[above * states + below]`; Infinity where not allowed. */
  readonly cost: Float64Array;
  /** The board at the top, at the bottom; null: any. */
  readonly top: number | null;
  readonly bottom: number | null;
  /** Pairs of boards that lie next to each other. */
  readonly neighbours: readonly (readonly [number, number])[];
  /** The one of those pairs whose joint is the panel's middle; null: none. */
  readonly centred: readonly [number, number] | null;
}

/** A stack from the top down. */
export interface Stack {
  readonly states: readonly number[];
  /** Sum of the joints' costs, and the worst of them. */
  readonly sum: number;
  readonly worst: number;
}

/** Whether `next` may be laid under `last` when `count` boards lie already. */
export function mayFollow(
  problem: StackProblem,
  isLaid: (board: number) => boolean,
  count: number,
  last: number,
  next: number,
): boolean {
  const { boardCount, top, bottom, neighbours, centred } = problem;
  if (next === top) return false;
  if (next === bottom && count !== boardCount - 1) return false;
  if (bottom !== null && count === boardCount - 1 && next !== bottom) return false;
  let mateWaits = false;
  let nextIsMate = false;
  for (const pair of neighbours) {
    const mate = partner(pair, next);
    if (mate !== null && mate !== last && isLaid(mate)) return false;
    const lastsMate = partner(pair, last);
    if (lastsMate === null || isLaid(lastsMate)) continue;
    mateWaits = true;
    nextIsMate ||= lastsMate === next;
  }
  // The mate of the last board comes now or never.
  if (mateWaits && !nextIsMate) return false;
  if (centred && isPair(centred, last, next)) {
    return count === Math.floor(boardCount / 2) || count === Math.ceil(boardCount / 2);
  }
  return true;
}

/** Whether a board may lie at the top. */
export function mayStart({ boardCount, top, bottom }: StackProblem, board: number): boolean {
  return (top === null || board === top) && (boardCount === 1 || board !== bottom);
}

/** Less by sum, or equal sums and a lesser worst joint. */
export function isBetter(sum: number, worst: number, oldSum: number, oldWorst: number): boolean {
  const even = 1e-9 * (1 + Math.abs(sum));
  return sum < oldSum - even || (sum <= oldSum + even && worst < oldWorst);
}

const partner = ([p, q]: readonly [number, number], board: number) =>
  board === p ? q : board === q ? p : null;

const isPair = ([p, q]: readonly [number, number], a: number, b: number) =>
  (p === a && q === b) || (p === b && q === a);
