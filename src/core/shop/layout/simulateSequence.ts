import type Fraction from 'fraction.js';
import { formatMm } from '../../units/formatMm.js';
import { dressVirtualPiece } from './dressVirtualPiece.js';
import { refusedStep } from './refusedStep.js';
import { sawVirtualPiece } from './sawVirtualPiece.js';
import type { VirtualPiece } from './virtualPiece.js';
import type { PromisedPiece, WorkStep } from './workSteps.js';

/** What a run over the virtual blank left. */
export interface SimulatedWork {
  readonly pieces: ReadonlyMap<string, VirtualPiece>;
  /** What each step made, in the order of the steps. */
  readonly made: readonly (readonly PromisedPiece[])[];
  /** Face area turned to dust and shavings, mm^2. */
  readonly sawnArea: Fraction;
  readonly dressedArea: Fraction;
}

/**
 * Carries the steps out on a virtual blank, knowing nothing of the layout but the settings.
 * @param blank size of the blank, mm
 * @param kerf the saw's cut, mm
 * @param steps what to do, in order
 * @param promises `"held"` (default) refuses a step whose pieces do not measure what it promised;
 *   `"ignored"` carries on, for settings rounded to a rule
 * @throws SeamgrainError `cannotDo` when a workpiece is not there, its reference edge is gone, the
 *   blade would miss the piece, an edge may not be dressed, or a promise is broken
 */
export function simulateSequence(
  blank: { readonly length: Fraction; readonly width: Fraction },
  kerf: Fraction,
  steps: readonly WorkStep[],
  promises: 'held' | 'ignored' = 'held',
): SimulatedWork {
  const { length, width } = blank;
  const zero = length.mul(0);
  const pieces = new Map<string, VirtualPiece>();
  pieces.set('panel', {
    name: 'panel',
    x: { from: zero, to: length },
    y: { from: zero, to: width },
    edges: { upper: 'outside', lower: 'outside', left: 'outside', right: 'outside' },
  });
  let sawnArea = zero;
  let dressedArea = zero;
  const made = steps.map((step, index) => {
    const workpiece = pieces.get(step.workpiece);
    if (!workpiece)
      throw refusedStep(index, `there is no ${step.workpiece} to work on at this point`);
    const before = areaOf(workpiece);
    const results =
      step.kind === 'dress'
        ? [dressVirtualPiece(workpiece, step, index)]
        : sawVirtualPiece(workpiece, step, kerf, index);
    pieces.delete(step.workpiece);
    for (const piece of results) pieces.set(piece.name, piece);
    const lost = results.reduce((area, piece) => area.sub(areaOf(piece)), before);
    if (step.kind === 'dress') dressedArea = dressedArea.add(lost);
    else sawnArea = sawnArea.add(lost);
    const sizes = results.map(sizeOf);
    if (promises === 'held') checkPromises(step, sizes, index);
    return sizes;
  });
  return { pieces, made, sawnArea, dressedArea };
}

function areaOf({ x, y }: VirtualPiece): Fraction {
  return x.to.sub(x.from).mul(y.to.sub(y.from));
}

function sizeOf({ name, x, y }: VirtualPiece): PromisedPiece {
  return { name, length: x.to.sub(x.from), width: y.to.sub(y.from) };
}

function checkPromises(step: WorkStep, sizes: readonly PromisedPiece[], index: number): void {
  step.makes.forEach((promised, at) => {
    const size = sizes[at]!;
    if (size.length.equals(promised.length) && size.width.equals(promised.width)) return;
    const shown = ({ length, width }: PromisedPiece) =>
      `${formatMm(length.valueOf(), 3)} x ${formatMm(width.valueOf(), 3)}`;
    throw refusedStep(
      index,
      `the ${promised.name} would measure ${shown(size)}, not the promised ${shown(promised)}`,
    );
  });
}
