import { isBetter, mayFollow, mayStart, type Stack, type StackProblem } from './stackProblem.js';

/**
 * The best way for every board of a given order, exactly (a shortest path through the ways).
 *
 * @param order boards from the top down.
 * @returns null when the order breaks a constraint.
 */
export function bestWays(problem: StackProblem, order: readonly number[]): Stack | null {
  if (!isAllowed(problem, order)) return null;
  const { boardOf, statesOf, cost } = problem;
  const states = boardOf.length;
  const sum = new Float64Array(states).fill(Number.POSITIVE_INFINITY);
  const worst = new Float64Array(states).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(states).fill(-1);
  for (const i of statesOf[order[0]]) sum[i] = worst[i] = 0;
  for (let k = 1; k < order.length; k++) {
    for (const j of statesOf[order[k]]) {
      for (const i of statesOf[order[k - 1]]) {
        const joint = cost[i * states + j];
        if (joint + sum[i] === Number.POSITIVE_INFINITY) continue;
        const most = Math.max(worst[i], joint);
        if (!isBetter(sum[i] + joint, most, sum[j], worst[j])) continue;
        sum[j] = sum[i] + joint;
        worst[j] = most;
        from[j] = i;
      }
    }
  }
  let end = -1;
  for (const j of statesOf[order[order.length - 1]]) {
    if (sum[j] === Number.POSITIVE_INFINITY) continue;
    if (end < 0 || isBetter(sum[j], worst[j], sum[end], worst[end])) end = j;
  }
  if (end < 0) return null;
  const chain: number[] = [];
  for (let state = end; state >= 0; state = from[state]) chain.unshift(state);
  return { states: chain, sum: sum[end], worst: worst[end] };
}

function isAllowed(problem: StackProblem, order: readonly number[]): boolean {
  if (!mayStart(problem, order[0])) return false;
  const laid = new Uint8Array(problem.boardCount);
  laid[order[0]] = 1;
  for (let k = 1; k < order.length; k++) {
    if (!mayFollow(problem, (board) => laid[board] === 1, k, order[k - 1], order[k])) return false;
    laid[order[k]] = 1;
  }
  return true;
}
