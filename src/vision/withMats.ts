import { SeamgrainError } from '../core/errors.js';
import type { OpenCv } from './openCv.js';

interface Freeable {
  delete(): void;
}

/**
 * Runs a piece of work on OpenCV and frees every matrix it kept, also when it fails.
 *
 * OpenCV throws numbers (pointers to its own exceptions); they come out as errors with words.
 * @param cv the instance
 * @param work gets `keep`, which marks a new matrix to be freed at the end and returns it
 */
export function withMats<Result>(
  cv: OpenCv,
  work: (keep: <T extends Freeable>(made: T) => T) => Result,
): Result {
  const kept: Freeable[] = [];
  try {
    return work((made) => {
      kept.push(made);
      return made;
    });
  } catch (thrown) {
    throw typeof thrown === 'number' ? cvFailure(cv, thrown) : thrown;
  } finally {
    for (const made of kept.reverse()) made.delete();
  }
}

function cvFailure(cv: OpenCv, pointer: number): SeamgrainError {
  const why = cv.exceptionFromPtr(pointer).msg.trim();
  return /memory/i.test(why)
    ? new SeamgrainError(
        'cannotDo',
        'The photo is too large to square up in memory.',
        'Make the photo smaller or crop it to the panel.',
      )
    : new SeamgrainError('internal', `OpenCV failed: ${why}`);
}
