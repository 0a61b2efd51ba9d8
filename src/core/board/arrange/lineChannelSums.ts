import { channelSums } from '../../seam/channelSums.js';
import type { WindowMeasures } from '../../seam/lineMeasures.js';
import type { ChannelSums } from '../../seam/visibilityFromSums.js';
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
  return channelSums(
    windows.map((window) => {
      const cues = windowCues(window, distanceMm);
      return useColour ? cues : { ...cues, colours: [0, 0] as const };
    }),
  );
}
