import type { ComparedCandidate, CompareResult } from '../../core/results/compareResult.js';
import { cutCueNoun } from '../forecast/cutCueNoun.js';
import { photoName } from '../words/photoName.js';

const what = {
  front: 'all the joints of a front at the best place',
  median: 'a rip anywhere',
  best: 'the best rip',
} as const;

/** What decides about a candidate, as a sentence; empty when it stands alone. */
export function reasonText(
  { candidates }: Pick<CompareResult, 'candidates'>,
  candidate: ComparedCandidate,
): string {
  const { decides, rank } = candidate;
  const other = candidates[rank === 1 ? 1 : rank - 2];
  if (!decides || !other) return '';
  const cut = photoName(other.photo);
  // Names cut short can be alike.
  const name = cut.includes('…') ? `number ${other.rank}` : cut;
  if (decides.by === 'equal') return `Nothing to choose between it and ${name}.`;
  if (decides.by === 'untold' || decides.v === null || decides.otherV === null) {
    return decides.v === null
      ? 'Last, because it cannot be told, or the front does not fit.'
      : `${name} cannot be told, or the front does not fit there.`;
  }
  const values = `V ${decides.v.toFixed(1)} against ${decides.otherV.toFixed(1)} in ${name}`;
  const where = rank === 1 ? 'there' : 'here';
  const cue = decides.cue ? `; ${where} the eye catches ${cutCueNoun(decides.cue)}` : '';
  return `Decided by ${what[decides.by]}: ${values}${cue}.`;
}
