import type { CompareResult } from '../../core/results/compareResult.js';
import { segmentName } from '../forecast/segmentName.js';
import { clauseOfV } from '../forecast/wordOfV.js';
import { capitalise } from '../words/capitalise.js';
import { photoName } from '../words/photoName.js';

/** The answer in one breath: which candidate, and what would be seen. */
export function headlineOfCompare({ candidates, front }: CompareResult): string {
  const [first] = candidates;
  if (!first) return 'No candidate.';
  const name = capitalise(photoName(first.photo));
  const loses = candidates.length > 1 ? `${name} loses least` : name;
  if (front && first.front) {
    const { worst } = first.front;
    if ((worst.v ?? 0) < 0.5)
      return `${loses}: at the best place every joint of the front disappears.`;
    return `${loses}: at the best place the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}.`;
  }
  if (front) return 'The front can be taken from none of the candidates.';
  if (first.vMedian === null) return 'The photos cannot tell which candidate would lose least.';
  return `${loses}: a typical rip in it ${clauseOfV(first.vMedian)}.`;
}
