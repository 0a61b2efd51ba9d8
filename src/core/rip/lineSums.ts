import { addStretch, noSums, sumNames } from '../seam/channelSums.js';
import type { LineMeasures } from '../seam/lineMeasures.js';
import { type ChannelSums, channels } from '../seam/visibilityFromSums.js';
import { windowCues } from '../seam/windowCues.js';

/** Running sums of every channel along a line, so that any part of it is summed in no time. */
export interface LineSums {
  /** Length of one stretch, mm. */
  readonly stretchMm: number;
  readonly stretches: number;
  /** Per channel: after i stretches, from [5 i] on: the sums in the order of `sumNames`. */
  readonly running: readonly Float64Array[];
}

/** @param keep which stretches count (not those on a marked knot). */
export function lineSums(
  line: LineMeasures,
  distanceMm: number,
  keep: (atMm: number) => boolean = () => true,
): LineSums {
  const stretches = line.windows.length;
  const running = channels.map(() => new Float64Array(sumNames.length * (stretches + 1)));
  const totals = channels.map(noSums);
  line.windows.forEach((window, i) => {
    const cues = keep(window.atMm) ? windowCues(window, distanceMm) : null;
    channels.forEach((channel, k) => {
      const total = totals[k];
      if (cues) addStretch(total, channel, cues);
      sumNames.forEach((name, n) => {
        running[k][sumNames.length * (i + 1) + n] = total[name];
      });
    });
  });
  const lengthMm = line.profileA.stepMm * line.u.length;
  return { stretchMm: lengthMm / stretches, stretches, running };
}

/** The same with no word on a thin line along the joint. */
export function withoutThinLine(line: LineSums): LineSums {
  const running = line.running.map((sums, k) =>
    channels[k].cue === 'glueLine' ? new Float64Array(sums.length) : sums,
  );
  return { ...line, running };
}

/** Which stretches have their middle between two places of the line: from .. to - 1. */
export function stretchesBetween(
  { stretchMm, stretches }: LineSums,
  fromMm: number,
  toMm: number,
): readonly [from: number, to: number] {
  const within = (i: number) => Math.min(stretches, Math.max(0, i));
  const from = within(Math.ceil(fromMm / stretchMm - 0.5));
  return [from, Math.max(from, within(Math.floor(toMm / stretchMm + 0.5)))];
}

/** Sums over the stretches whose middle lies between two places of the line. */
export function sumsBetween(line: LineSums, fromMm: number, toMm: number): ChannelSums {
  const [from, to] = stretchesBetween(line, fromMm, toMm);
  const [i, k] = [sumNames.length * from, sumNames.length * to];
  return line.running.map((sums) => ({
    count: sums[k] - sums[i],
    squares: sums[k + 1] - sums[i + 1],
    errors: sums[k + 2] - sums[i + 2],
    cubes: sums[k + 3] - sums[i + 3],
    counting: sums[k + 4] - sums[i + 4],
  }));
}
