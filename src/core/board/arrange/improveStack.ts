import { bestWays } from './bestWays.js';
import { isBetter, type Stack, type StackProblem } from './stackProblem.js';

/** Runs of up to so many boards are moved together. */
const longestRun = 3;
const mostRounds = 40;

/**
 * Betters an order by moving and reversing runs of boards until nothing helps; after each change
 * every board's way is chosen anew, exactly for that order.
 *
 * @returns null when the order itself is not allowed.
 */
export function improveStack(problem: StackProblem, start: readonly number[]): Stack | null {
  let order = [...start];
  let best = bestWays(problem, order);
  if (best === null) return null;
  for (let round = 0; round < mostRounds; round++) {
    let step: { order: number[]; stack: Stack } | null = null;
    for (const changed of changes(order)) {
      const stack = bestWays(problem, changed);
      const goal: Stack = step?.stack ?? best;
      if (stack && isBetter(stack.sum, stack.worst, goal.sum, goal.worst)) {
        step = { order: changed, stack };
      }
    }
    if (!step) return best;
    ({ order, stack: best } = step);
  }
  return best;
}

/** Orders one change away: a run reversed, or a short run lifted out and laid in elsewhere. */
function* changes(order: readonly number[]): Generator<number[]> {
  const n = order.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j <= n; j++) {
      yield [...order.slice(0, i), ...order.slice(i, j).reverse(), ...order.slice(j)];
    }
  }
  for (let length = 1; length <= longestRun; length++) {
    for (let i = 0; i + length <= n; i++) {
      const run = order.slice(i, i + length);
      const rest = [...order.slice(0, i), ...order.slice(i + length)];
      for (let at = 0; at <= rest.length; at++) {
        if (at === i) continue;
        yield [...rest.slice(0, at), ...run, ...rest.slice(at)];
        if (length > 1) {
          yield [...rest.slice(0, at), ...[...run].reverse(), ...rest.slice(at)];
        }
      }
    }
  }
}
