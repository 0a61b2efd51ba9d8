import { channelSums } from './channelSums.js';
import { aboveFigure } from './cueFigure.js';
import type { LineMeasures } from './lineMeasures.js';
import {
  channels,
  ownFigures,
  type PooledVisibility,
  poolChannels,
  spreadsOfJoint,
  visibilityFromSums,
} from './visibilityFromSums.js';
import { windowCues } from './windowCues.js';

/** Visibility of one seam at one distance: the cubic mean over its windows, and theirs. */
export interface SeamVisibility extends PooledVisibility {
  readonly windows: readonly PooledVisibility[];
}

/**
 * Visibility of a seam for an eye at distanceMm.
 *
 * A channel (a cue, or one octave of the break) counts by what it has above the board's own
 * figure. With x its strength over threshold, M = mean of x^3 over the windows of a line and m its
 * rms over lines of the same boards with no seam:
 *   V_i^3 = a^3 max(0, M_seam - (mean M_own + 2 spread M_own)) / (1 + (2 m)^2)^(3/2)
 * and V = (sum V_i^3)^(1/3), a what counts of lines that run nearly along the joint
 * (`amongLinesFactor`), m freed of what errors of the reading give (`carryErrors`). With no figure
 * (m = 0) and steep lines this is the cubic mean of x; a line that does no more than the board's own
 * lines comes out as 0, however lively the board. Octaves are masked each by itself, as in the eye:
 * a board full of pores does not hide a broken ring line. A stretch's V is the same without the two
 * spreads, as one stretch may stand out from a joint that does not; a step of colour, read for the
 * joint as a whole, keeps them.
 *
 * @param seam measures along the seam. @param own measures along lines with no seam. With none,
 *   only colour and glue line are judged: the others need the board's own figure.
 */
export function seamVisibility(
  seam: LineMeasures,
  own: readonly LineMeasures[],
  distanceMm: number,
): SeamVisibility {
  const here = cuesAlong(seam, distanceMm);
  const elsewhere = ownSums(own, distanceMm);
  const figures = ownFigures(elsewhere);
  const windows = here.map((x) =>
    poolChannels(
      channels.map(({ strength, counts, wholeJoint }, k) => {
        const value = strength(x);
        const figure = figures[k];
        return value === null || !figure
          ? null
          : aboveFigure(value ** 3, figure, wholeJoint ? spreadsOfJoint : 0) * (counts?.(x) ?? 1);
      }),
    ),
  );
  return { ...visibilityFromSums(channelSums(here), elsewhere), windows };
}

/** V of the whole seam alone, as `seamVisibility` has it: 0 where it cannot be told. */
export function vOfSeam(
  seam: LineMeasures,
  own: readonly LineMeasures[],
  distanceMm: number,
): number {
  const here = cuesAlong(seam, distanceMm);
  return visibilityFromSums(channelSums(here), ownSums(own, distanceMm)).v ?? 0;
}

const cuesAlong = (line: LineMeasures, distanceMm: number) =>
  line.windows.map((window) => windowCues(window, distanceMm));

const ownSums = (own: readonly LineMeasures[], distanceMm: number) =>
  own.map((line) => channelSums(cuesAlong(line, distanceMm)));
