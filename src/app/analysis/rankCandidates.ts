import { byWorth } from '../../core/pipeline/comparePanels.js';
import { compareReason } from '../../core/pipeline/compareReason.js';
import { type CurveVerdict, curveVerdict } from '../../core/pipeline/curveVerdict.js';
import type { CompareReason } from '../../core/results/compareResult.js';
import type { CandidateBoard } from './candidateBoards.js';
import type { CandidateReading } from './candidateReading.js';

/** A candidate with what a rip in it usually costs, and the best one. */
export interface Candidate extends CandidateReading, CurveVerdict {
  readonly board: CandidateBoard;
  readonly notes: readonly string[];
  /** The best rip, where one can be told. */
  readonly best: { readonly yMm: number; readonly v: number } | null;
  readonly decides: CompareReason | null;
}

/**
 * Candidates as the verb `compare` ranks them, with what sets each apart; those still waiting come
 * last.
 *
 * @param byFront by the front's best place first.
 */
export function rankCandidates(
  boards: readonly CandidateBoard[],
  readings: readonly CandidateReading[],
  byFront: boolean,
): readonly Candidate[] {
  const ranked = boards
    .map((board, index) => {
      const reading = readings[index]!;
      const verdict = curveVerdict(reading.curve ?? []);
      const judged = { front: reading.front?.place ?? null, ...verdict };
      return { board, reading, verdict, candidate: judged, cue: verdict.cue };
    })
    .sort((a, b) => byWorth(a.candidate, b.candidate, byFront));
  return ranked.map(({ board, reading, verdict }, k) => {
    const { vBest, bestYMm } = verdict;
    return {
      ...{ board, ...reading, ...verdict, notes: reading.notes ?? [] },
      best: vBest === null || bestYMm === null ? null : { yMm: bestYMm, v: vBest },
      decides: compareReason(ranked, k, byFront),
    };
  });
}
