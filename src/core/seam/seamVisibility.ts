import type { Cue } from '../results/visibilityResult.js';
import { cubicSum } from '../visibility/cubicSum.js';
import { maskCue } from '../visibility/maskCue.js';
import { poolCues } from '../visibility/poolCues.js';
import { bandFrequenciesPerMm } from './bandAmplitudes.js';
import type { LineMeasures } from './lineMeasures.js';
import { type CueStrengths, windowCues } from './windowCues.js';

/** Visibility of one seam at one distance. */
export interface SeamVisibility {
  /** Cubic mean over the windows. */
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly windows: readonly { readonly v: number | null; readonly cue: Cue | null }[];
}

/** One thing the eye may catch, masked by the same thing in the boards: a cue, or one octave of the break. */
interface Channel {
  readonly cue: Cue;
  readonly strength: (window: CueStrengths) => number | null;
}

const channels: readonly Channel[] = [
  ...bandFrequenciesPerMm.map((_, k) => ({
    cue: 'break' as const,
    strength: (w: CueStrengths) => w.breaks[k],
  })),
  ...(['direction', 'spacing', 'colour', 'glueLine'] as const).map((cue) => ({
    cue,
    strength: (w: CueStrengths) => w[cue],
  })),
];

/**
 * Visibility of a seam for an eye at distanceMm.
 *
 * A channel (a cue, or one octave of the break) counts by what it has above the board's own
 * figure. With x its strength over threshold, M = mean of x^3 over the windows of a line and m its
 * rms over lines of the same boards with no seam:
 *   V_i^3 = max(0, M_seam - (mean M_own + 2 spread M_own)) / (1 + (2 m)^2)^(3/2)
 * and V = (sum V_i^3)^(1/3). With no figure (m = 0) this is the cubic mean of x; a line that does
 * no more than the board's own lines comes out as 0, however lively the board. Octaves are masked
 * each by itself, as in the eye: a board full of pores does not hide a broken ring line.
 *
 * @param seam measures along the seam. @param own measures along lines with no seam. With none,
 *   only colour and glue line are judged: the others need the board's own figure.
 */
export function seamVisibility(
  seam: LineMeasures,
  own: readonly LineMeasures[],
  distanceMm: number,
): SeamVisibility {
  const here = seam.windows.map((window) => windowCues(window, distanceMm));
  const elsewhere = own.map((line) => line.windows.map((w) => windowCues(w, distanceMm)));
  const judged =
    own.length > 0 ? channels : channels.filter((c) => c.cue === 'colour' || c.cue === 'glueLine');
  const figures = judged.map((channel) => figureOf(elsewhere, channel));
  const whole = judged.map((channel, k) => {
    const cubes = here.map(channel.strength).filter(told).map(cube);
    const { usual, spread, rms } = figures[k];
    return cubes.length === 0 ? null : above(average(cubes), usual + 2 * spread, rms);
  });
  const windows = here.map((x) =>
    poolCues(
      byCue(
        judged,
        judged.map((channel, k) => {
          const value = channel.strength(x);
          return value === null ? null : above(cube(value), figures[k].usual, figures[k].rms);
        }),
      ),
    ),
  );
  return { ...poolCues(byCue(judged, whole)), windows };
}

/** Channels of one cue pooled by cubes. */
function byCue(
  judged: readonly Channel[],
  values: readonly (number | null)[],
): { [cue in Cue]?: number | null } {
  const out: { [cue in Cue]?: number | null } = {};
  judged.forEach(({ cue }, k) => {
    out[cue] = cubicSum([out[cue] ?? null, values[k]]);
  });
  return out;
}

const told = (value: number | null): value is number => value !== null;
const cube = (value: number) => value ** 3;
const above = (cubed: number, usual: number, rms: number) =>
  maskCue(Math.cbrt(Math.max(0, cubed - usual)), rms);

interface OwnFigure {
  /** Mean of x^3 over lines with no seam, and its spread from line to line. */
  readonly usual: number;
  readonly spread: number;
  readonly rms: number;
}

function figureOf(lines: readonly (readonly CueStrengths[])[], { strength }: Channel): OwnFigure {
  const values = lines.map((line) => line.map(strength).filter(told)).filter((v) => v.length > 0);
  if (values.length === 0) return { usual: 0, spread: 0, rms: 0 };
  const cubes = values.map((line) => average(line.map(cube)));
  const usual = average(cubes);
  return {
    usual,
    spread: Math.sqrt(average(cubes.map((c) => (c - usual) ** 2))),
    rms: Math.sqrt(average(values.flat().map((v) => v * v))),
  };
}

const average = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
