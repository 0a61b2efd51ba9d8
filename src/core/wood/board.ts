import type { ResolvedBoard } from './resolvedBoard.js';
import type { RingField } from './ringField.js';

/** An imagined board ready to be drawn: its settled quantities and its ring field. */
export interface Board extends ResolvedBoard {
  readonly field: RingField;
}
