import type Fraction from 'fraction.js';
import { SeamgrainError } from '../../errors.js';
import type { Span } from './divideAxis.js';
import type { DressStep, SawStep } from './workSteps.js';

/** How an edge came about; only outside edges are references, only sawn ones are dressed. */
export type EdgeOrigin = 'outside' | 'sawn' | 'dressed';

/** The four sides of a piece as it lay in the panel. */
export type Side = 'upper' | 'lower' | 'left' | 'right';

/** A piece on the virtual bench, at the place where it lay in the blank. */
export interface VirtualPiece {
  readonly name: string;
  readonly x: Span;
  readonly y: Span;
  readonly edges: Readonly<Record<Side, EdgeOrigin>>;
}

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
    throw refused(index, `the ${piece.name} no longer has the ${step.reference}`);
  }
  const axis = step.kind === 'rip' ? 'y' : 'x';
  if ((axis === 'y') !== (side === 'upper' || side === 'lower')) {
    throw refused(index, `a ${step.kind} cannot be measured from the ${step.reference}`);
  }
  const near = step.toBlade === 'near' ? step.fence : step.fence.sub(kerf);
  const far = near.add(kerf);
  const { from, to } = piece[axis];
  if (near.compare(0) <= 0 || far.compare(to.sub(from)) >= 0) {
    throw refused(index, `the blade would not pass through the ${piece.name}`);
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
    throw refused(index, `the ${piece.name} is crosscut; its width may not change any more`);
  }
  let { from, to } = piece.y;
  const edges = { ...piece.edges };
  for (const edge of step.edges) {
    if (edges[edge] !== 'sawn') throw refused(index, `the ${edge} edge is not fresh from the saw`);
    edges[edge] = 'dressed';
    if (edge === 'upper') from = from.add(step.amount);
    else to = to.sub(step.amount);
  }
  if (from.compare(to) >= 0) throw refused(index, `nothing would be left of the ${piece.name}`);
  return { ...piece, y: { from, to }, edges };
}

function refused(index: number, reason: string): SeamgrainError {
  return new SeamgrainError(
    'cannotDo',
    `step ${index + 1} cannot be done here: ${reason}`,
    'keep the order of the sequence: farthest cut first, dressing before crosscuts',
  );
}
