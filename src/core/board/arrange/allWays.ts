import {
  type ArrangeRules,
  type PlaningDirection,
  planesTowards,
  showsHeart,
} from './arrangeRules.js';
import type { BoardFace } from './boardPhotos.js';
import type { BoardWay } from './boardWay.js';
import type { JointTable } from './jointTable.js';

/**
 * Every way that each board may lie under the rules that speak of single boards.
 *
 * @param towards all boards whose planing direction is known plane this way; null: any.
 */
export function allWays(
  table: JointTable,
  rules: ArrangeRules,
  towards: PlaningDirection | null,
): BoardWay[] {
  const ways: BoardWay[] = [];
  table.boards.forEach(({ photos, mostSteps }, board) => {
    const faces: BoardFace[] = photos[1] === null ? ['A'] : ['A', 'B'];
    for (const face of faces) {
      if (rules.heart === 'up' && showsHeart(rules, { board, face }) === false) continue;
      for (const turned of [false, true]) {
        const planes = planesTowards(rules, { board, face, turned });
        if (towards !== null && planes !== null && planes !== towards) continue;
        // The middle first, so that a board is not shifted for nothing.
        for (let k = 0; k <= 2 * mostSteps; k++) {
          const shift = k % 2 === 1 ? (k + 1) / 2 : -k / 2;
          ways.push({ board, face, turned, shift: shift + 0 });
        }
      }
    }
  });
  return ways;
}
