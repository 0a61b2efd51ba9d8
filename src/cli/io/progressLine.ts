import type { Progress } from '../../core/progress.js';
import type { CliIo } from './cliIo.js';

const eraseLine = '\r\u001b[K';

/** Progress as one line that rewrites itself; silent where nobody watches. */
export function progressLine(io: CliIo): { readonly progress: Progress; end(): void } {
  if (!io.watched) return { progress: () => {}, end: () => {} };
  return {
    progress: (fraction, what) => {
      io.err(`${eraseLine}${Math.round(100 * fraction)} % ${what}`);
    },
    end: () => io.err(eraseLine),
  };
}
