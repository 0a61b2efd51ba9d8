import { refusedStep } from './refusedStep.js';
import type { VirtualPiece } from './virtualPiece.js';
import type { DressStep } from './workSteps.js';

/**
 * Takes the step's amount off long edges of a virtual piece.
 * @throws SeamgrainError `cannotDo` for an edge that the saw did not make, one already dressed, a
 *   piece already crosscut to its key dimension, or more than there is
 */
export function dressVirtualPiece(
  piece: VirtualPiece,
  step: DressStep,
  index: number,
): VirtualPiece {
  if (piece.edges.left === 'sawn' || piece.edges.right === 'sawn') {
    throw refusedStep(index, `the ${piece.name} is crosscut; its width may not change any more`);
  }
  let { from, to } = piece.y;
  const edges = { ...piece.edges };
  for (const edge of step.edges) {
    if (edges[edge] !== 'sawn')
      throw refusedStep(index, `the ${edge} edge is not fresh from the saw`);
    edges[edge] = 'dressed';
    if (edge === 'upper') from = from.add(step.amount);
    else to = to.sub(step.amount);
  }
  if (from.compare(to) >= 0) throw refusedStep(index, `nothing would be left of the ${piece.name}`);
  return { ...piece, y: { from, to }, edges };
}
