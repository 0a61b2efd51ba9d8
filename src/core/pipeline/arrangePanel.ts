import { arrangeBoards } from '../board/arrange/arrangeBoards.js';
import type { ArrangeOptions } from '../board/arrange/arrangeOptions.js';
import type { ArrangeRules } from '../board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../board/arrange/boardPhotos.js';
import { checkRules } from '../board/arrange/checkRules.js';
import { readJointTable } from '../board/arrange/readJointTable.js';
import type { Progress } from '../progress.js';
import type { ArrangeResult } from '../results/arrangeResult.js';

/**
 * From photos of the boards to the order and way round in which their joints show least.
 *
 * @param boards photos cropped to each board, grain from left to right.
 * @throws SeamgrainError when the boards make no panel or the rules cannot be kept.
 */
export function arrangePanel(
  boards: readonly BoardPhotos[],
  options: ArrangeOptions,
  rules: ArrangeRules,
  progress?: Progress,
): ArrangeResult {
  // Before the joints are read, which takes a while.
  checkRules(
    rules,
    boards.map(({ faceA, faceB }) => ({ photos: [faceA.name, faceB?.name ?? null] as const })),
  );
  return arrangeBoards(readJointTable(boards, options, progress), rules);
}
