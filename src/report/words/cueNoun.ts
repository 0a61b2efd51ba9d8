import type { Cue } from '../../core/results/visibilityResult.js';

const nouns: Readonly<Record<Cue, string>> = {
  break: 'lines that do not meet',
  direction: 'a turn of the grain',
  spacing: 'a change of line spacing',
  colour: 'a change of colour',
  glueLine: 'the glue line',
};

/** What the eye catches, for a table. */
export function cueNoun(cue: Cue): string {
  return nouns[cue];
}
