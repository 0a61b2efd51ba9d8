import type { Cue } from '../results/visibilityResult.js';
import { cubicSum } from '../visibility/cubicSum.js';
import { poolCues } from '../visibility/poolCues.js';
import { bandFrequenciesPerMm } from './bandAmplitudes.js';
import { aboveFigure, type CueSums, type OwnFigure, ownFigure } from './cueFigure.js';
import type { CueStrengths } from './windowCues.js';

/** One thing the eye may catch, masked by the same thing in the boards: a cue, one octave of the break, or a part of the colour step. */
export interface Channel {
  readonly cue: Cue;
  readonly strength: (window: CueStrengths) => number | null;
  /** Read for the joint as a whole: all its stretches say much the same. */
  readonly wholeJoint?: boolean;
  /** What errors of the reading alone would give; they hide nothing. */
  readonly error?: (window: CueStrengths) => number;
  /** What the lines say counts by their angle; colour and glue line count whole. */
  readonly counts?: (window: CueStrengths) => number;
}

export const channels: readonly Channel[] = [
  ...bandFrequenciesPerMm.map((_, k) => ({
    cue: 'break' as const,
    strength: (w: CueStrengths) => w.breaks[k],
    error: (w: CueStrengths) => w.breakErrors[k],
    counts: (w: CueStrengths) => w.among,
  })),
  ...[0, 1].map((part) => ({
    cue: 'colour' as const,
    strength: (w: CueStrengths) => w.colours[part],
    wholeJoint: true,
  })),
  ...(['direction', 'spacing', 'glueLine'] as const).map((cue) => ({
    cue,
    strength: (w: CueStrengths) => w[cue],
    ...(cue !== 'glueLine' && { counts: (w: CueStrengths) => w.among }),
  })),
];

/** A joint is the boards' own figure up to so many spreads from line to line. */
export const spreadsOfJoint = 2;

/** Sums over a line, or a part of one: one entry per channel. */
export type ChannelSums = readonly CueSums[];

/** Strongest cue and pooled visibility. */
export interface PooledVisibility {
  readonly v: number | null;
  readonly cue: Cue | null;
}

/**
 * Visibility of a line, or of any part of one, from the sums of its channels; see
 * `seamVisibility` for what it means. Where no lines cross there is none to break or turn: those
 * stretches, which tell colour and glue line only, count as nothing seen in the other channels.
 *
 * @param seam along the joint. @param own along lines of the same boards with no joint.
 */
export function visibilityFromSums(
  seam: ChannelSums,
  own: readonly ChannelSums[],
): PooledVisibility {
  const figures = ownFigures(own);
  const stretches = Math.max(...seam.map(({ count }) => count));
  return poolChannels(
    seam.map(({ count, cubes, counting }, k) => {
      const figure = figures[k];
      if (!figure || count === 0) return null;
      const share = cubes > 0 ? counting / cubes : 0;
      return (
        aboveFigure(cubes / count, figure, spreadsOfJoint) * Math.cbrt((share * count) / stretches)
      );
    }),
  );
}

/**
 * The boards' own figure in every channel. With no line to tell it, only colour and glue line can
 * be judged: null for the others.
 */
export function ownFigures(own: readonly ChannelSums[]): (OwnFigure | null)[] {
  return channels.map(({ cue }, k) =>
    own.length > 0 || cue === 'colour' || cue === 'glueLine'
      ? ownFigure(own.map((line) => line[k]))
      : null,
  );
}

/**
 * Channels of one cue pooled, then the cues: octaves by cubes, as different things are; the two
 * parts of a colour step by squares, as parts of one difference are.
 */
export function poolChannels(values: readonly (number | null)[]): PooledVisibility {
  const byCue: { [cue in Cue]?: number | null } = {};
  channels.forEach(({ cue }, k) => {
    const [sum, value] = [byCue[cue] ?? null, values[k]];
    byCue[cue] =
      cue === 'colour' && sum !== null && value !== null
        ? Math.hypot(sum, value)
        : cubicSum([sum, value]);
  });
  return poolCues(byCue);
}
