import { SeamgrainError } from '../../errors.js';
import type { ArrangeRules } from './arrangeRules.js';
import { boardCalled } from './boardCalled.js';
import type { TableBoard } from './jointTable.js';

/**
 * Refuses rules that speak of boards that are not there or contradict each other.
 *
 * @throws SeamgrainError `wrongUsage`; `cannotDo` when a face that must show was not photographed.
 */
export function checkRules(
  rules: ArrangeRules,
  boards: readonly Pick<TableBoard, 'photos'>[],
): void {
  const { top, bottom, together, matched } = rules;
  const pairs = [...together, ...matched.map((pair) => pair.boards)];
  for (const board of [top ?? 0, bottom ?? 0, ...pairs.flat()]) {
    if (Number.isInteger(board) && board >= 0 && board < boards.length) continue;
    refuse(
      `There is no board ${board + 1}.`,
      `Boards are numbered 1 to ${boards.length} in the order of their photos.`,
    );
  }
  if (top !== null && top === bottom) {
    refuse(
      `${boardCalled(boards[top])} cannot lie at the top and at the bottom.`,
      'Name two different boards.',
    );
  }
  if (pairs.some(([p, q]) => p === q)) {
    refuse('A board cannot lie beside itself.', 'Name two different boards.');
  }
  boards.forEach((called, board) => {
    const mates = new Set(pairs.flatMap(([p, q]) => (p === board ? [q] : q === board ? [p] : [])));
    if (mates.size > 2) {
      refuse(
        `${boardCalled(called)} cannot touch more than two others.`,
        'Take one of its neighbours away.',
      );
    }
  });
  if (rules.heart === 'up') demandHeartFaces(rules, boards);
}

function demandHeartFaces(
  rules: ArrangeRules,
  boards: readonly Pick<TableBoard, 'photos'>[],
): void {
  boards.forEach((called, board) => {
    if (rules.heartFaces[board] !== 'B' || called.photos[1] !== null) return;
    throw new SeamgrainError(
      'cannotDo',
      `The heart side of ${boardCalled(called)} is its other face, which was not photographed.`,
      'Photograph that face too (on the command line both as A.jpg+B.jpg), or lay the heart sides alternating.',
    );
  });
}

function refuse(message: string, hint: string): never {
  throw new SeamgrainError('wrongUsage', message, hint);
}
