import type { BoardWay } from './boardWay.js';

/** The whole panel turned half round: the same joints, read from the other end. */
export const turnPanel = (ways: readonly BoardWay[]): BoardWay[] =>
  ways.map((way) => ({ ...way, turned: !way.turned, shift: 0 - way.shift })).reverse();

/** Of a panel and itself turned half round, the one with fewer boards turned from their photos. */
export function turnUpright(ways: readonly BoardWay[]): readonly BoardWay[] {
  const turned = ways.filter((way) => way.turned).length;
  const other = turnPanel(ways);
  if (2 * turned !== ways.length) return 2 * turned > ways.length ? other : ways;
  return other[0].board < ways[0].board ? other : ways;
}
