import type { LineMm } from '../../results/scoreResult.js';

/** A seam that the photo shows, with the chance of such a break where there is none. */
export interface FoundSeam {
  readonly kind: 'rip' | 'crosscut';
  readonly line: LineMm;
  readonly p: number;
  /** The photo does not show it: the cut beside it runs on, and shows further along its line. */
  readonly implied?: boolean;
}
