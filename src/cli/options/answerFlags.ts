/** How an answer is wanted, as the options of output and units read. */
export interface AnswerFlags {
  readonly out?: string;
  readonly json?: true;
  readonly units: 'in' | 'mm';
  readonly rule: '16' | '32' | '64';
}
