/** Where a verb's words go; tests hand in their own. */
export interface CliIo {
  /** The answer. */
  readonly out: (text: string) => void;
  /** Warnings and progress. */
  readonly err: (text: string) => void;
  /** Whether a person watches `err`, so that progress may rewrite one line. */
  readonly watched: boolean;
}
