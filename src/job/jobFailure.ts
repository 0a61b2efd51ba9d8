import { SeamgrainError } from '../core/errors.js';
import type { JobFailure } from './workerMessages.js';

/** Describes anything thrown so that it survives a structured clone. */
export function toJobFailure(thrown: unknown): JobFailure {
  const stack = thrown instanceof Error ? (thrown.stack ?? '') : '';
  if (thrown instanceof SeamgrainError) {
    return { code: thrown.code, message: thrown.message, hint: thrown.hint, stack };
  }
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  return { code: 'internal', message, hint: '', stack };
}

/** The error again on the other side, with the stack of where it was thrown. */
export function fromJobFailure(failure: JobFailure): SeamgrainError {
  const error = new SeamgrainError(failure.code, failure.message, failure.hint);
  if (failure.stack) error.stack = failure.stack;
  return error;
}
