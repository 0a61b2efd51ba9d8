import { lengthWords } from '../../units/lengthWords.js';
import type { NumberedCut } from './numberCuts.js';
import type { SawLimits } from './sawLimits.js';
import type { PromisedPiece, WorkStep } from './workSteps.js';

/**
 * Says which pieces are too short or too narrow for the saw or the jointer.
 * @returns one sentence per kind of problem; none when the sequence is ordinary work
 */
export function safetyProblems(
  cuts: readonly NumberedCut[],
  steps: readonly WorkStep[],
  kerfMm: number,
  limits: SawLimits,
): string[] {
  const rips = cuts.filter(({ step }) => step.kind === 'rip');
  const crosscuts = cuts.filter(({ step }) => step.kind === 'crosscut');
  const besideFence = ({ step }: NumberedCut) =>
    step.fence.valueOf() - (step.toBlade === 'far' ? kerfMm : 0);
  const alongFence = ({ step }: NumberedCut) => step.makes[0].length.valueOf();
  const dressed = steps.filter((step) => step.kind === 'dress').map(({ makes }) => makes[0]);
  return [
    ...sentence(
      rips.filter((cut) => besideFence(cut) < limits.leastRipWidthMm),
      (found) => found.map((cut) => `${lengthWords(besideFence(cut))} at cut ${cut.n}`),
      `between fence and blade is too narrow for the table saw (least ${lengthWords(limits.leastRipWidthMm)}): take the other edge as reference, a band saw, or a wider rail.`,
    ),
    ...sentence(
      rips.filter((cut) => alongFence(cut) < limits.leastRipLengthMm),
      ([first]) => [lengthWords(alongFence(first!))],
      `is too short to run along the fence (least ${lengthWords(limits.leastRipLengthMm)}): rip by hand or on a carrier.`,
    ),
    ...sentence(
      crosscuts.flatMap(({ n, step }) =>
        step.makes
          .filter(({ length }) => length.valueOf() < limits.leastCrosscutLengthMm)
          .map((piece) => ({ n, piece })),
      ),
      (found) =>
        found.map(({ n, piece }) => `${piece.name} ${lengthWords(lengthOf(piece))} at cut ${n}`),
      `is too short for the sled (least ${lengthWords(limits.leastCrosscutLengthMm)}): cut it by hand in a mitre box, or move the front.`,
    ),
    ...sentence(
      dressed.filter((piece) => lengthOf(piece) < limits.leastJointerLengthMm),
      (found) => [
        `${lengthWords(lengthOf(found[0]!))} (${found.map(({ name }) => name).join(', ')})`,
      ],
      `is too short for the jointer (least ${lengthWords(limits.leastJointerLengthMm)}): dress with a hand plane.`,
    ),
  ];
}

function lengthOf({ length }: PromisedPiece): number {
  return length.valueOf();
}

function sentence<T>(
  found: readonly T[],
  name: (found: readonly T[]) => string[],
  predicate: string,
): string[] {
  if (found.length === 0) return [];
  const subject = name(found).join('; ');
  return [`${subject.charAt(0).toUpperCase()}${subject.slice(1)} ${predicate}`];
}
