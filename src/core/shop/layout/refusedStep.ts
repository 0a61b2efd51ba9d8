import { SeamgrainError } from '../../errors.js';

/**
 * The refusal of a step that cannot be done at its place in the sequence.
 * @param index of the step, from 0
 */
export function refusedStep(index: number, reason: string): SeamgrainError {
  return new SeamgrainError(
    'cannotDo',
    `step ${index + 1} cannot be done here: ${reason}`,
    'keep the order of the sequence: farthest cut first, dressing before crosscuts',
  );
}
