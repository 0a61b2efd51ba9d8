import { segmentName } from '../../report/forecast/segmentName.js';
import { clauseOfV } from '../../report/forecast/wordOfV.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import type { Candidate } from '../analysis/rankCandidates.js';

/** The answer of the candidates' page. @param left how many are still to be looked at */
export function candidateHeadline(
  ranked: readonly Candidate[],
  left: number,
  byFront: boolean,
): string {
  const count = ranked.length;
  if (count < 2 && !byFront) return 'One candidate. Bring the photos of the others in.';
  const what = byFront ? 'Trying every place for the front' : 'Trying every rip';
  if (left > 0) return `${what}: ${count - left} of ${count} panels…`;
  const [first] = ranked;
  if (byFront) return `${frontHeadline(first, count)}${real(ranked)}`;
  const word = levelOfVisibility(first?.vMedian ?? null)?.word;
  if (!first || !word) return 'The photos cannot tell which panel would lose least.';
  return `${nameOf(first)} loses least: a typical rip in it ${visibilityClause(word, false)}.${real(ranked)}`;
}

function frontHeadline(first: Candidate | undefined, count: number): string {
  const place = first?.front?.place;
  if (!first || !place) return 'The front can be taken from none of the candidates.';
  const { worst } = place;
  const look =
    (worst.v ?? 0) < 0.5
      ? 'every joint of the front disappears'
      : `the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}`;
  return `${nameOf(first)}${count > 1 ? ' loses least' : ''}: at the best place ${look}.`;
}

/** Where a drawn board comes first: which one on the bench does. */
function real([first, ...others]: readonly Candidate[]): string {
  const best = first?.board.photo ? undefined : others.find(({ board }) => board.photo);
  const isTold = best && (best.front?.place || best.vMedian !== null);
  return isTold ? ` Of those photographed, ${best.board.name} does.` : '';
}

/** What the sentence begins with. */
const nameOf = ({ board }: Candidate) =>
  board.photo ? board.name : `The ${board.name}, not photographed,`;
