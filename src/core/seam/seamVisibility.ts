import type { Cue } from '../results/visibilityResult.js';
import { cubicMean } from '../visibility/cubicMean.js';
import { poolCues } from '../visibility/poolCues.js';
import { aboveFigure, type CueSums, type OwnFigure, ownFigure } from './cueFigure.js';
import type { LineMeasures } from './lineMeasures.js';
import { type CueStrengths, windowCues } from './windowCues.js';

export const allCues: readonly Cue[] = ['break', 'direction', 'spacing', 'colour', 'glueLine'];

/** Visibility of one seam at one distance. */
export interface SeamVisibility {
  /** Cubic mean over the windows. */
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly windows: readonly { readonly v: number | null; readonly cue: Cue | null }[];
}

/**
 * Visibility of a seam for an eye at distanceMm.
 *
 * A cue counts by what it has above the board's own figure. With x the cue over its threshold, M =
 * mean of x^3 over the windows of a line and m its rms over lines of the same boards with no seam:
 *   V_i^3 = max(0, M_seam - (mean M_own + 2 spread M_own)) / (1 + (2 m)^2)^(3/2)
 * and V = (sum V_i^3)^(1/3) over cues. With no figure (m = 0) this is the cubic mean of x; a line
 * that does no more than the board's own lines comes out as 0, however lively the board.
 *
 * @param seam measures along the seam. @param own measures along lines with no seam (may be none:
 *   then nothing is masked).
 */
export function seamVisibility(
  seam: LineMeasures,
  own: readonly LineMeasures[],
  distanceMm: number,
): SeamVisibility {
  const figure = figuresOf(own, distanceMm);
  const strengths = seam.windows.map((window) => windowCues(window, distanceMm));
  const whole: { [cue in Cue]?: number | null } = {};
  for (const cue of allCues) {
    const mean = cubicMean(strengths.map((s) => s[cue]));
    whole[cue] = mean === null ? null : aboveFigure(mean ** 3, figure[cue], 2);
  }
  const windows = strengths.map((x) => {
    const masked: { [cue in Cue]?: number | null } = {};
    for (const cue of allCues) {
      const value = x[cue];
      masked[cue] = value === null ? null : aboveFigure(value ** 3, figure[cue], 0);
    }
    return poolCues(masked);
  });
  return { ...poolCues(whole), windows };
}

function figuresOf(own: readonly LineMeasures[], distanceMm: number): Record<Cue, OwnFigure> {
  const lines = own.map((line) => line.windows.map((window) => windowCues(window, distanceMm)));
  return Object.fromEntries(
    allCues.map((cue) => [cue, ownFigure(lines.map((line) => sumsOf(line, cue)))]),
  ) as Record<Cue, OwnFigure>;
}

function sumsOf(line: readonly CueStrengths[], cue: Cue): CueSums {
  const told = line.map((s) => s[cue]).filter((v) => v !== null);
  return {
    count: told.length,
    squares: told.reduce((sum, v) => sum + v * v, 0),
    cubes: told.reduce((sum, v) => sum + v ** 3, 0),
  };
}
