import { improveStack } from './improveStack.js';
import { isBetter, mayFollow, mayStart, type Stack, type StackProblem } from './stackProblem.js';

/** Unfinished stacks kept at each length. */
const kept = 400;
/** So many of the finished ones are improved. */
const improved = 4;

/** The boards laid so far, as a chain. */
interface Unfinished {
  readonly state: number;
  readonly laid: Uint8Array;
  readonly sum: number;
  readonly worst: number;
  readonly before: Unfinished | null;
}

/**
 * A good stack for more boards than the exact search can take: grown board by board keeping the
 * best unfinished stacks, then improved by moving and turning runs of boards. Not proved best.
 *
 * @returns null when no stack was found within the constraints.
 */
export function longStack(problem: StackProblem): Stack | null {
  const { boardCount, boardOf } = problem;
  let front: Unfinished[] = [];
  for (let state = 0; state < boardOf.length; state++) {
    if (!mayStart(problem, boardOf[state])) continue;
    const laid = new Uint8Array(boardCount);
    laid[boardOf[state]] = 1;
    front.push({ state, laid, sum: 0, worst: 0, before: null });
  }
  for (let count = 1; count < boardCount; count++) front = grown(problem, front, count);
  const starts = front.slice(0, improved).map((end) => boardsOf(problem, end));
  const stacks = starts.map((order) => improveStack(problem, order)).filter((s) => s !== null);
  return stacks.reduce<Stack | null>(
    (a, b) => (a && !isBetter(b.sum, b.worst, a.sum, a.worst) ? a : b),
    null,
  );
}

/** Every way to lay one more board, the best of each (set, last) kept, then the best of all. */
function grown(problem: StackProblem, front: readonly Unfinished[], count: number): Unfinished[] {
  const { boardOf, statesOf, cost } = problem;
  const states = boardOf.length;
  const best = new Map<string, Unfinished>();
  for (const end of front) {
    const isLaid = (board: number) => end.laid[board] === 1;
    const last = boardOf[end.state];
    for (let next = 0; next < problem.boardCount; next++) {
      if (isLaid(next) || !mayFollow(problem, isLaid, count, last, next)) continue;
      const laid = end.laid.slice();
      laid[next] = 1;
      const set = laid.join('');
      for (const j of statesOf[next]) {
        const joint = cost[end.state * states + j];
        if (joint === Number.POSITIVE_INFINITY) continue;
        const sum = end.sum + joint;
        const worst = Math.max(end.worst, joint);
        const key = `${set} ${j}`;
        const old = best.get(key);
        if (old && !isBetter(sum, worst, old.sum, old.worst)) continue;
        best.set(key, { state: j, laid, sum, worst, before: end });
      }
    }
  }
  return [...best.values()].sort((a, b) => a.sum - b.sum || a.worst - b.worst).slice(0, kept);
}

function boardsOf({ boardOf }: StackProblem, end: Unfinished): number[] {
  const order: number[] = [];
  for (let at: Unfinished | null = end; at; at = at.before) order.unshift(boardOf[at.state]);
  return order;
}
