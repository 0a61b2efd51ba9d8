import type Fraction from 'fraction.js';
import type { Span } from './divideAxis.js';
import { refusedStep } from './refusedStep.js';
import type { Side, VirtualPiece } from './virtualPiece.js';
import type { SawStep } from './workSteps.js';

/**
 * Saws a virtual piece in two at the step's setting.
 * @returns the piece at the fence or stop, then the piece beyond the blade
 * @throws SeamgrainError `cannotDo` without the reference edge, or when the blade misses
 */
export function sawVirtualPiece(
  piece: VirtualPiece,
  step: SawStep,
  kerf: Fraction,
  index: number,
): [VirtualPiece, VirtualPiece] {
  const side = step.reference.split(' ')[0] as Side;
  if (piece.edges[side] !== 'outside') {
    throw refusedStep(index, `the ${piece.name} no longer has the ${step.reference}`);
  }
  const axis = step.kind === 'rip' ? 'y' : 'x';
  if ((axis === 'y') !== (side === 'upper' || side === 'lower')) {
    throw refusedStep(index, `a ${step.kind} cannot be measured from the ${step.reference}`);
  }
  const near = step.toBlade === 'near' ? step.fence : step.fence.sub(kerf);
  const far = near.add(kerf);
  const { from, to } = piece[axis];
  if (near.compare(0) <= 0 || far.compare(to.sub(from)) >= 0) {
    throw refusedStep(index, `the blade would not pass through the ${piece.name}`);
  }
  const start = side === 'upper' || side === 'left';
  const [first, second] =
    axis === 'y' ? (['lower', 'upper'] as const) : (['right', 'left'] as const);
  const atFence = start ? { from, to: from.add(near) } : { from: to.sub(near), to };
  const beyond = start ? { from: from.add(far), to } : { from, to: to.sub(far) };
  const sawn = (name: string, span: Span, edge: Side): VirtualPiece => ({
    ...piece,
    name,
    [axis]: span,
    edges: { ...piece.edges, [edge]: 'sawn' },
  });
  return [
    sawn(step.makes[0].name, atFence, start ? first : second),
    sawn(step.makes[1].name, beyond, start ? second : first),
  ];
}
