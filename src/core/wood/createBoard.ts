import type { Board } from './board.js';
import type { BoardSpec } from './boardSpec.js';
import { createRingField } from './createRingField.js';
import { resolveBoard } from './resolveBoard.js';

/** Grows the board that `spec` describes; the same spec always gives the same board. */
export function createBoard(spec: BoardSpec): Board {
  const resolved = resolveBoard(spec);
  return { ...resolved, field: createRingField(resolved) };
}
