import type { ArrangeConflict, ArrangedBoard } from '../../results/arrangeResult.js';

/**
 * What the chosen order costs at the bench: neighbours that plane opposite ways, and heart sides
 * left as they came.
 */
export function arrangeConflicts(order: readonly ArrangedBoard[]): ArrangeConflict[] {
  const right = order.filter(({ planesTowards }) => planesTowards === 'right');
  const left = order.filter(({ planesTowards }) => planesTowards === 'left');
  const fewer = right.length < left.length ? right : left;
  if (fewer.length === 0) return [];
  const [few, many] = fewer === right ? ['right', 'left'] : ['left', 'right'];
  const boards = fewer.map(({ board }) => board).sort((a, b) => a - b);
  const names = boards.length === 1 ? `Board ${boards[0]} planes` : `Boards ${list(boards)} plane`;
  return [
    {
      kind: 'tearOut',
      boards,
      text: `${names} towards the ${few}, the others towards the ${many}: planing the glued panel will tear out on one side or the other. Plane each before gluing, or scrape and sand.`,
    },
  ];
}

function list(boards: readonly number[]): string {
  return boards.length < 2
    ? `${boards[0]}`
    : `${boards.slice(0, -1).join(', ')} and ${boards.at(-1)}`;
}
