import type { CueSums } from './cueFigure.js';
import { type Channel, type ChannelSums, channels } from './visibilityFromSums.js';
import type { CueStrengths } from './windowCues.js';

/** Names of the sums, in their order. */
export const sumNames = ['count', 'squares', 'errors', 'cubes', 'counting'] as const;

type Sums = { -readonly [name in keyof CueSums]: number };

export const noSums = (): Sums => ({ count: 0, squares: 0, errors: 0, cubes: 0, counting: 0 });

/** Adds one stretch to a channel's sums: nothing where it does not tell the channel. */
export function addStretch(
  sums: Sums,
  { strength, error, counts }: Channel,
  cues: CueStrengths,
): void {
  const x = strength(cues);
  if (x === null) return;
  sums.count++;
  if (x === 0 && !error) return;
  sums.squares += x * x;
  if (error) sums.errors += error(cues) ** 2;
  sums.cubes += x ** 3;
  sums.counting += (counts ? x * counts(cues) : x) ** 3;
}

/** Sums of every channel over the stretches of a line. */
export function channelSums(stretches: readonly CueStrengths[]): ChannelSums {
  const sums = channels.map(noSums);
  for (const cues of stretches) {
    for (let k = 0; k < channels.length; k++) addStretch(sums[k], channels[k], cues);
  }
  return sums;
}
