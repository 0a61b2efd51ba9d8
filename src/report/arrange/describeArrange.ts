import type { ArrangeResult } from '../../core/results/arrangeResult.js';

/** The order found, as one would call it out at the bench, from the top of the panel down. */
export function describeArrange(result: ArrangeResult): string[] {
  const boards = result.order.map((board, k) => {
    const turned = board.turned ? ', turned end for end' : '';
    const face = board.face === 'B' ? ', other face up' : '';
    const joint = result.joints[k];
    const below = joint
      ? `; the joint below it ${joint.word ?? 'cannot be told'}${joint.v === null ? '' : ` (V ${joint.v.toFixed(1)})`}`
      : '';
    return `${k + 1}. ${board.photo}${turned}${face}${below}`;
  });
  const proof = result.exact
    ? 'No other order or way round shows less.'
    : 'A good order; too many boards to be sure that none is better.';
  return [
    'From the top down:',
    ...boards,
    '',
    proof,
    ...result.conflicts.map((conflict) => conflict.text),
    ...result.notes,
  ];
}
