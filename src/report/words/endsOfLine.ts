import type { PlacedSeam } from './placedSeam.js';

/** What the two ends of a line are called, the first one first. */
export const endsOfLine = (runs: PlacedSeam['runs']) =>
  runs === 'along' ? (['left', 'right'] as const) : (['upper', 'lower'] as const);
