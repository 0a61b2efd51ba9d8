import type { ComparedCandidate } from '../results/compareResult.js';
import type { CandidateStock } from './candidateStock.js';

/** What a comparison tells of how a candidate is sawn, and of its gap. */
export function sawnAndGap({
  cut,
  cutBy,
  cutEstimate,
  gapMm,
}: Pick<CandidateStock, 'cut' | 'cutBy' | 'cutEstimate' | 'gapMm'>): Pick<
  ComparedCandidate,
  'cut' | 'cutFromFace' | 'gapMm'
> {
  return {
    cut: cutBy === 'end' ? cut : null,
    ...(cutBy === 'face' && cutEstimate && { cutFromFace: cutEstimate }),
    gapMm,
  };
}
