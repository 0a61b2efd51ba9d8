import type { WindowMeasures } from '../../seam/lineMeasures.js';
import { type ChannelSums, channels } from '../../seam/visibilityFromSums.js';
import { windowCues } from '../../seam/windowCues.js';

/**
 * Sums of every channel over the stretches of a line, once for all joints that it takes part in.
 *
 * @param useColour false leaves colour steps out.
 */
export function lineChannelSums(
  windows: readonly WindowMeasures[],
  distanceMm: number,
  useColour: boolean,
): ChannelSums {
  const sums = channels.map(() => ({ count: 0, squares: 0, errors: 0, cubes: 0, counting: 0 }));
  for (const window of windows) {
    const cues = windowCues(window, distanceMm);
    channels.forEach((channel, k) => {
      const silent = channel.cue === 'colour' && !useColour;
      const x = silent ? 0 : channel.strength(cues);
      if (x === null) return;
      sums[k].count++;
      sums[k].squares += x * x;
      sums[k].errors += silent ? 0 : (channel.error?.(cues) ?? 0) ** 2;
      sums[k].cubes += x ** 3;
      sums[k].counting += (x * (channel.counts?.(cues) ?? 1)) ** 3;
    });
  }
  return sums;
}
