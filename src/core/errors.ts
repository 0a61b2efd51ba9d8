/** Machine-readable kinds of failure; `wrongUsage` and its kin end the CLI with status 2. */
export type ErrorCode =
  | 'wrongUsage'
  | 'badLength'
  | 'badPhoto'
  | 'badPanel'
  | 'cannotDo'
  | 'internal';

/**
 * A failure in the user's words: `message` says what is wrong, `hint` what to do.
 * Everything that a user can cause is thrown as one of these.
 */
export class SeamgrainError extends Error {
  override readonly name = 'SeamgrainError';
  constructor(
    readonly code: ErrorCode,
    message: string,
    readonly hint = '',
  ) {
    super(message);
  }
}
