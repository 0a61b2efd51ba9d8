import type { CandidateStock } from '../../core/pipeline/candidateStock.js';
import { sawnAndGap } from '../../core/pipeline/sawnAndGap.js';
import type { CompareResult } from '../../core/results/compareResult.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Project } from '../state/project.js';
import type { Candidate } from './rankCandidates.js';
import { seasonWords } from './stockOf.js';

/** The ranked candidates as the verb `compare` would answer; all of them must be read. */
export function compareAnswer(
  ranked: readonly Candidate[],
  stocks: readonly (CandidateStock | null)[],
  panels: ReadonlyMap<string, PanelOnShelf>,
  { settings, gap }: Pick<Project, 'settings' | 'gap'>,
): CompareResult {
  const { distanceMm, kerfMm, dressMm, frontWidthMm, frontHeightMm } = settings;
  const byFront = settings.candidatesFor === 'front';
  const season = `${seasonWords(gap)}, ${byFront ? 'over the front' : 'over the whole width of each'}.`;
  return {
    schema: 'seamgrain/compare@1',
    ...{ distanceMm, kerfMm, dressMm },
    front: byFront ? { widthMm: frontWidthMm, heightMm: frontHeightMm } : null,
    candidates: ranked.map((candidate, k) => {
      const { board, front, vMedian, vBest, bestYMm, decides, notes } = candidate;
      const stock = stocks[k];
      const { widthMm, heightMm } = panels.get(board.id)!.panel;
      return {
        ...{ photo: board.name, rank: k + 1, isImagined: board.photo === null },
        ...{ widthMm, heightMm, vMedian, vBest, bestYMm, front: front?.place ?? null, decides },
        ...(stock ? sawnAndGap(stock) : { cut: null, gapMm: null }),
        notes: [
          ...notes,
          ...(stock?.notes ?? []),
          ...(stock && stock.gapMm !== null ? [season] : []),
          ...(front && front.place === null
            ? [`The front cannot be taken from it. ${front.why}`]
            : []),
        ],
      };
    }),
  };
}
