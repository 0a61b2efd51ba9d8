import { visibilityRamp } from './visibilityRamp.js';

/** What the number V says, in a sentence, wherever V is printed beside a word of the scale. */
export const scaleText = `V is how visible: ${visibilityRamp
  .map(({ word, fromV }, i) => (i === 0 ? '' : `${fromV} ${word}`))
  .filter(Boolean)
  .join(', ')}; below ${visibilityRamp[1]!.fromV} it disappears.`;
