import type { Cue } from '../../core/results/visibilityResult.js';
import type { LengthUnits } from './lengthUnits.js';
import { smallLengthText } from './smallLengthText.js';

/** What is known where the eye catches. */
export interface CueFacts {
  readonly cue: Cue | null;
  readonly offsetMm: number | null;
  readonly changeDeg: number | null;
}

/**
 * What the eye catches, as the end of a sentence after `where` or `because`:
 * `the lines step 3/32 in`, `the grain turns 4 degrees`, `the colour changes`.
 */
export function cueText({ cue, offsetMm, changeDeg }: CueFacts, units: LengthUnits): string {
  if (cue === 'break') {
    if (offsetMm === null) return 'the lines do not meet';
    return `the lines step ${smallLengthText(offsetMm, units)}`;
  }
  if (cue === 'direction') {
    if (changeDeg === null) return 'the grain changes direction';
    return `the grain turns ${degreesText(changeDeg)}`;
  }
  if (cue === 'spacing') return 'the lines change their spacing';
  if (cue === 'colour') return 'the colour changes';
  if (cue === 'glueLine') return 'the glue line shows';
  return 'it stands out';
}

/** `4 degrees`, `0.5 degrees`, `1 degree`: unsigned, as finely as it matters. */
function degreesText(changeDeg: number): string {
  const size = Math.abs(changeDeg);
  const shown = size < 2 ? Math.round(size * 10) / 10 : Math.round(size);
  return `${shown} ${shown === 1 ? 'degree' : 'degrees'}`;
}
