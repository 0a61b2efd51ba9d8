import { type ArrangeRules, planesTowards, showsHeart } from './arrangeRules.js';
import { boardCalled } from './boardCalled.js';
import type { BoardWay } from './boardWay.js';
import type { JointTable } from './jointTable.js';
import { isMatched, type MatchedLie } from './matchedWays.js';

/**
 * Which of the maker's rules an order laid by hand does not keep, in words.
 *
 * @param ways every board once, from the top down.
 */
export function brokenRules(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  ways: readonly BoardWay[],
): string[] {
  const called = (board: number) => boardCalled(table.boards[board]);
  const placeOf = (board: number) => ways.findIndex((way) => way.board === board);
  const broken: string[] = [];
  if (rules.top !== null && placeOf(rules.top) !== 0) {
    broken.push(`${called(rules.top)} is to lie at the top.`);
  }
  if (rules.bottom !== null && placeOf(rules.bottom) !== ways.length - 1) {
    broken.push(`${called(rules.bottom)} is to lie at the bottom.`);
  }
  for (const [p, q] of rules.together) {
    if (Math.abs(placeOf(p) - placeOf(q)) === 1) continue;
    broken.push(`${called(p)} and ${called(q)} are to lie side by side.`);
  }
  for (const lie of matched) {
    const [p, q] = lie.pair.boards;
    const [above, below] = [placeOf(p), placeOf(q)].sort((a, b) => a - b);
    if (below - above === 1 && isMatched(lie, ways[above], ways[below])) continue;
    broken.push(`${called(p)} and ${called(q)} do not lie as a ${lie.pair.kind}-match.`);
  }
  return [...broken, ...brokenHeart(rules, ways, called), ...brokenPlaning(rules, ways)];
}

function brokenHeart(
  rules: ArrangeRules,
  ways: readonly BoardWay[],
  called: (board: number) => string,
): string[] {
  if (rules.heart === 'up') {
    return ways.flatMap((way) =>
      showsHeart(rules, way) === false ? [`${called(way.board)} lies heart side down.`] : [],
    );
  }
  if (rules.heart === 'free') return [];
  return ways.slice(1).flatMap((below, i) => {
    const [a, b] = [showsHeart(rules, ways[i]), showsHeart(rules, below)];
    if (a === null || a !== b) return [];
    return [
      `${called(ways[i].board)} and ${called(below.board)} show the same side: heart sides are to alternate.`,
    ];
  });
}

function brokenPlaning(rules: ArrangeRules, ways: readonly BoardWay[]): string[] {
  if (rules.planing === 'free') return [];
  const directions = new Set(ways.flatMap((way) => planesTowards(rules, way) ?? []));
  return directions.size > 1 ? ['The boards are all to plane the same way, and do not.'] : [];
}
