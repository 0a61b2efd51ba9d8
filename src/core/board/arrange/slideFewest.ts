import type { BoardWay } from './boardWay.js';

/**
 * The same panel with as many boards as can be lying centred: only what boards are slid against
 * each other shows, so all may be shifted together as far as their spare length allows.
 *
 * @param mostSteps how far each board may be shifted, by board number.
 */
export function slideFewest(
  ways: readonly BoardWay[],
  mostSteps: readonly number[],
): readonly BoardWay[] {
  let best = ways;
  const slid = (some: readonly BoardWay[]) => some.filter(({ shift }) => shift !== 0).length;
  for (const { shift: by } of ways) {
    const moved = ways.map((way) => ({ ...way, shift: way.shift - by + 0 }));
    const fits = moved.every(({ board, shift }) => Math.abs(shift) <= mostSteps[board]);
    if (fits && slid(moved) < slid(best)) best = moved;
  }
  return best;
}
