import { lengthWords } from '../../units/lengthWords.js';
import type { SawLimits } from './sawLimits.js';
import type { SawStep } from './workSteps.js';

/**
 * The cautions that belong beside one cut, for its own sizes.
 * Common practice, no published source; the saw's manual, local codes and trained practice decide.
 * @param step the cut
 * @param kerfMm saw cut, mm
 * @param isFirst whether the reference edge has not met the fence yet
 */
export function cutCautions(
  step: SawStep,
  kerfMm: number,
  limits: SawLimits,
  isFirst: boolean,
): string[] {
  const nearMm = step.fence.valueOf() - (step.toBlade === 'far' ? kerfMm : 0);
  return step.kind === 'rip'
    ? ripCautions(step, nearMm, limits, isFirst)
    : crosscutCautions(step, nearMm, limits);
}

function ripCautions(step: SawStep, nearMm: number, limits: SawLimits, isFirst: boolean) {
  const cautions = [
    'Guard and riving knife on, fence locked, blade just clear of the face. Stand out of line with the blade.',
  ];
  if (nearMm < limits.pushBlockWidthMm) {
    cautions.push(
      `Only ${lengthWords(nearMm)} between fence and blade: push blocks, no hand in there.`,
    );
  }
  if (!isFirst) {
    cautions.push(
      'Look at the edge again before it meets the fence. Bowed or twisted stock never runs on the fence: rest it, joint it, then rip.',
    );
  }
  const beyondMm = step.makes[1].width.valueOf();
  if (beyondMm < 25.4) {
    cautions.push(
      `The piece beyond the blade is only ${lengthWords(beyondMm)} wide: let it lie until the blade stands still.`,
    );
  }
  cautions.push(
    'If the kerf closes on the knife or opens wide, stop the saw: the wood is in tension.',
  );
  return cautions;
}

function crosscutCautions(step: SawStep, nearMm: number, limits: SawLimits) {
  const cautions = ['On the sled against its stop. Never against the rip fence, never freehand.'];
  const beyondMm = step.makes[1].length.valueOf();
  const short = [
    [step.makes[0].name, nearMm] as const,
    [step.makes[1].name, beyondMm] as const,
  ].filter(([, mm]) => mm < limits.clampLengthMm);
  for (const [name, mm] of short) {
    cautions.push(`The ${name} is only ${lengthWords(mm)} long: clamp it to the sled, hands away.`);
  }
  cautions.push('Leave both pieces lying until the blade stands still.');
  return cautions;
}
