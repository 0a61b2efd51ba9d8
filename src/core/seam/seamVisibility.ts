import type { Cue } from '../results/visibilityResult.js';
import { cubicMean } from '../visibility/cubicMean.js';
import { maskCue } from '../visibility/maskCue.js';
import { poolCues } from '../visibility/poolCues.js';
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
  const figure = ownFigure(own, distanceMm);
  const strengths = seam.windows.map((window) => windowCues(window, distanceMm));
  const whole: { [cue in Cue]?: number | null } = {};
  for (const cue of allCues) {
    const mean = cubicMean(strengths.map((s) => s[cue]));
    const { usual, spread, rms } = figure[cue];
    whole[cue] = mean === null ? null : above(mean ** 3, usual + 2 * spread, rms);
  }
  const windows = strengths.map((x) => {
    const masked: { [cue in Cue]?: number | null } = {};
    for (const cue of allCues) {
      const value = x[cue];
      masked[cue] = value === null ? null : above(value ** 3, figure[cue].usual, figure[cue].rms);
    }
    return poolCues(masked);
  });
  return { ...poolCues(whole), windows };
}

const above = (cube: number, usual: number, rms: number) =>
  maskCue(Math.cbrt(Math.max(0, cube - usual)), rms);

interface OwnFigure {
  /** Mean of x^3 over lines with no seam, and its spread from line to line. */
  readonly usual: number;
  readonly spread: number;
  readonly rms: number;
}

function ownFigure(own: readonly LineMeasures[], distanceMm: number): Record<Cue, OwnFigure> {
  const lines = own.map((line) => line.windows.map((window) => windowCues(window, distanceMm)));
  return Object.fromEntries(allCues.map((cue) => [cue, figureOf(lines, cue)])) as Record<
    Cue,
    OwnFigure
  >;
}

function figureOf(lines: readonly (readonly CueStrengths[])[], cue: Cue): OwnFigure {
  const told = lines
    .map((line) => line.map((s) => s[cue]).filter((v) => v !== null))
    .filter((values) => values.length > 0);
  if (told.length === 0) return { usual: 0, spread: 0, rms: 0 };
  const cubes = told.map((values) => average(values.map((v) => v ** 3)));
  const usual = average(cubes);
  return {
    usual,
    spread: Math.sqrt(average(cubes.map((c) => (c - usual) ** 2))),
    rms: Math.sqrt(average(told.flat().map((v) => v * v))),
  };
}

const average = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
