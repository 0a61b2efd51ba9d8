import type { Cue } from '../../core/results/visibilityResult.js';
import { cueNoun } from '../words/cueNoun.js';

/** What the eye would catch at a joint that is still to be cut: there is no glue line yet. */
export function cutCueNoun(cue: Cue): string {
  return cue === 'glueLine' ? 'half a ring line along the joint' : cueNoun(cue);
}
