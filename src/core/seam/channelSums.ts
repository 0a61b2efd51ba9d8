import type { CueSums } from './cueFigure.js';
import { type Channel, type ChannelSums, channels } from './visibilityFromSums.js';
import type { CueStrengths } from './windowCues.js';

/** Names of the sums, in their order. */
export const sumNames = ['count', 'squares', 'errors', 'cubes', 'counting'] as const;

/** What one stretch adds to a channel's sums: nothing where it does not tell the channel. */
export function stretchSums({ strength, error, counts }: Channel, cues: CueStrengths): CueSums {
  const x = strength(cues);
  if (x === null) return { count: 0, squares: 0, errors: 0, cubes: 0, counting: 0 };
  return {
    count: 1,
    squares: x * x,
    errors: (error?.(cues) ?? 0) ** 2,
    cubes: x ** 3,
    counting: (x * (counts?.(cues) ?? 1)) ** 3,
  };
}

/** Sums of every channel over the stretches of a line. */
export function channelSums(stretches: readonly CueStrengths[]): ChannelSums {
  return channels.map((channel) => {
    const sums = { count: 0, squares: 0, errors: 0, cubes: 0, counting: 0 };
    for (const cues of stretches) {
      const here = stretchSums(channel, cues);
      for (const name of sumNames) sums[name] += here[name];
    }
    return sums;
  });
}
