import { isBetter, mayFollow, mayStart, type Stack, type StackProblem } from './stackProblem.js';

/** More boards than this are too many for the exact search (time and memory grow as 2^n). */
export const mostBoardsExact = 12;

/**
 * The best stack, exactly: dynamic programming over (set of boards laid, last board in its way).
 *
 * best(S, j) = min over i in S \ j of best(S \ j, i) + cost(i, j), states carrying the board's
 * way; equal sums are decided by the worst joint.
 *
 * @param problem at most `mostBoardsExact` boards.
 * @returns null when the constraints leave no stack.
 * @see Held & Karp 1962, J. SIAM 10(1):196-210 (the recursion, there for closed tours).
 */
export function heldKarp(problem: StackProblem): Stack | null {
  const { boardCount, boardOf, statesOf, cost } = problem;
  const states = boardOf.length;
  const sets = 1 << boardCount;
  const sum = new Float64Array(sets * states).fill(Number.POSITIVE_INFINITY);
  const worst = new Float64Array(sets * states).fill(Number.POSITIVE_INFINITY);
  const from = new Int16Array(sets * states).fill(-1);
  for (let state = 0; state < states; state++) {
    if (!mayStart(problem, boardOf[state])) continue;
    sum[(1 << boardOf[state]) * states + state] = 0;
    worst[(1 << boardOf[state]) * states + state] = 0;
  }
  for (let set = 1; set < sets - 1; set++) {
    const count = bitCount(set);
    const isLaid = (board: number) => ((set >> board) & 1) === 1;
    for (let last = 0; last < boardCount; last++) {
      if (!isLaid(last)) continue;
      for (let next = 0; next < boardCount; next++) {
        if (isLaid(next) || !mayFollow(problem, isLaid, count, last, next)) continue;
        const here = set * states;
        const there = (set | (1 << next)) * states;
        for (const i of statesOf[last]) {
          if (sum[here + i] === Number.POSITIVE_INFINITY) continue;
          for (const j of statesOf[next]) {
            const joint = cost[i * states + j];
            if (joint === Number.POSITIVE_INFINITY) continue;
            const total = sum[here + i] + joint;
            const most = Math.max(worst[here + i], joint);
            if (!isBetter(total, most, sum[there + j], worst[there + j])) continue;
            sum[there + j] = total;
            worst[there + j] = most;
            from[there + j] = i;
          }
        }
      }
    }
  }
  return traceBack(problem, sum, worst, from);
}

function traceBack(
  { boardOf }: StackProblem,
  sum: Float64Array,
  worst: Float64Array,
  from: Int16Array,
): Stack | null {
  const states = boardOf.length;
  let set = sum.length / states - 1;
  let end = -1;
  for (let j = 0; j < states; j++) {
    const k = set * states + j;
    if (sum[k] === Number.POSITIVE_INFINITY) continue;
    const old = set * states + end;
    if (end < 0 || isBetter(sum[k], worst[k], sum[old], worst[old])) end = j;
  }
  if (end < 0) return null;
  const best = set * states + end;
  const chain: number[] = [];
  for (let state = end; state >= 0; ) {
    chain.unshift(state);
    const before = from[set * states + state];
    set &= ~(1 << boardOf[state]);
    state = before;
  }
  return { states: chain, sum: sum[best], worst: worst[best] };
}

function bitCount(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest &= rest - 1) count++;
  return count;
}
