import { lengthWords } from './lengthWords.js';
import type { NumberedCut } from './numberCuts.js';
import type { SawLimits } from './sawLimits.js';
import type { WorkStep } from './workSteps.js';

/**
 * Says which pieces are too short or too narrow for the saw or the jointer.
 * @returns one sentence per problem; none when the sequence is ordinary work
 */
export function safetyProblems(
  cuts: readonly NumberedCut[],
  steps: readonly WorkStep[],
  kerfMm: number,
  limits: SawLimits,
): string[] {
  return [
    ...cuts.flatMap((cut) =>
      cut.step.kind === 'rip' ? ripProblems(cut, kerfMm, limits) : crosscutProblems(cut, limits),
    ),
    ...jointerProblems(steps, limits),
  ];
}

function ripProblems({ n, step }: NumberedCut, kerfMm: number, limits: SawLimits): string[] {
  const problems: string[] = [];
  const nearMm = step.fence.valueOf() - (step.toBlade === 'far' ? kerfMm : 0);
  if (nearMm < limits.leastRipWidthMm) {
    problems.push(
      `Cut ${n}: ${lengthWords(nearMm)} between fence and blade is too narrow for the table saw (least ${lengthWords(limits.leastRipWidthMm)}). Take the other edge as reference, a band saw, or a wider rail.`,
    );
  }
  const alongMm = step.makes[0].length.valueOf();
  if (alongMm < limits.leastRipLengthMm) {
    problems.push(
      `Cut ${n}: ${lengthWords(alongMm)} is too short to run along the fence (least ${lengthWords(limits.leastRipLengthMm)}). Rip by hand or on a carrier.`,
    );
  }
  return problems;
}

function crosscutProblems({ n, step }: NumberedCut, limits: SawLimits): string[] {
  return step.makes
    .filter(({ length }) => length.valueOf() < limits.leastCrosscutLengthMm)
    .map(
      ({ name, length }) =>
        `Cut ${n}: a ${name} of ${lengthWords(length.valueOf())} is too short for the sled (least ${lengthWords(limits.leastCrosscutLengthMm)}). Cut it by hand in a mitre box, or move the front.`,
    );
}

function jointerProblems(steps: readonly WorkStep[], limits: SawLimits): string[] {
  const short = steps
    .filter((step) => step.kind === 'dress')
    .map(({ makes }) => makes[0])
    .filter(({ length }) => length.valueOf() < limits.leastJointerLengthMm);
  if (short.length === 0) return [];
  const names = short.map(({ name }) => name).join(', ');
  return [
    `${names}: ${lengthWords(short[0]!.length.valueOf())} is too short for the jointer (least ${lengthWords(limits.leastJointerLengthMm)}). Dress with a hand plane.`,
  ];
}
