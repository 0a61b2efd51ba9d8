import type { LineMeasures } from './lineMeasures.js';

/**
 * A line with no joint as what the boards do by themselves: its turns count whole. At a joint only
 * a turn beyond the reading's own error is one; what masks it is all that may be read at such a line,
 * errors and all.
 */
export function asFigure(line: LineMeasures): LineMeasures {
  return { ...line, windows: line.windows.map((window) => ({ ...window, doubtRad: 0 })) };
}
