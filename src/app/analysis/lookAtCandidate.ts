import { comparedFront } from '../../core/pipeline/comparePanels.js';
import type { ForecastOptions } from '../../core/pipeline/forecastOptions.js';
import { candidateKey, candidatePanel } from '../images/candidatePanel.js';
import type { Settings } from '../state/project.js';
import { type FrontBench, openFrontBench } from '../worker/frontBench.js';
import type { CandidateBoard } from './candidateBoards.js';
import type { FrontReading } from './candidateReading.js';
import { forecastQuestion } from './forecastQuestion.js';
import { knownCandidates as known } from './knownCandidates.js';

/** One candidate's questions, as keys of what is known. */
export interface LookKeys {
  readonly curve: string;
  /** null: no front is wanted. */
  readonly front: string | null;
}

const unmarked = { findSeams: false, seams: [], leftOut: [] };

export function lookKeysOf(board: CandidateBoard, settings: Settings): LookKeys {
  const question = questionOf(board, settings);
  const { kerfMm, dressMm, distanceMm, leftOut } = question;
  const panel = candidateKey(board);
  const withFront = settings.candidatesFor === 'front';
  return {
    curve: JSON.stringify([panel, kerfMm, dressMm, distanceMm, leftOut]),
    front: withFront ? JSON.stringify([panel, question]) : null,
  };
}

/** Whether there is nothing left to look for. */
export const isLookedAt = ({ curve, front }: LookKeys): boolean =>
  known.curves.has(curve) && (front === null || known.fronts.has(front));

/**
 * Tries every rip, and where it is wanted every place for the front, in a worker of its own, and
 * keeps what was still to be known.
 */
export async function lookAtCandidate(
  board: CandidateBoard,
  settings: Settings,
  signal: AbortSignal,
  tell: (fraction: number) => void,
): Promise<void> {
  const { panel } = await candidatePanel(board);
  if (signal.aborted) return;
  tell(0.2);
  const keys = lookKeysOf(board, settings);
  const question = questionOf(board, settings);
  const { kerfMm, dressMm, distanceMm, leftOut } = question;
  const { widthMm, heightMm } = panel;
  let bench: FrontBench | null = null;
  const reading = new Promise<void>((resolve, reject) => {
    const doneWhenKnown = () => isLookedAt(keys) && resolve();
    const keepFront = (front: FrontReading) => {
      if (keys.front !== null) known.fronts.set(keys.front, front);
      doneWhenKnown();
    };
    bench = openFrontBench(
      { photo: panel, distanceMm, leftOut },
      {
        onReady(notes) {
          const drawnNotes = board.imagined ? panel.notes : [];
          known.faces.set(keys.curve, { widthMm, heightMm, notes: [...drawnNotes, ...notes] });
          tell(0.4);
        },
        onCurve(_, curve) {
          known.curves.set(keys.curve, curve);
          doneWhenKnown();
        },
        onFront: () => {},
        onPlaces(places) {
          const place = comparedFront(places[0]);
          keepFront(place ? { place } : { place: null, why: 'No place was found for the front.' });
        },
        onProgress: (fraction) => tell(0.5 + 0.5 * fraction),
        // A front that does not fit leaves the rips to be told.
        onProblem: (message, of) =>
          of === 'places' ? keepFront({ place: null, why: message }) : reject(new Error(message)),
      },
    );
    signal.addEventListener('abort', () => resolve());
    if (!known.curves.has(keys.curve)) bench.askCurve({ kerfMm, dressMm });
    if (keys.front !== null && !known.fronts.has(keys.front)) bench.askPlaces(question);
  });
  try {
    await reading;
  } finally {
    (bench as FrontBench | null)?.close();
  }
}

const questionOf = ({ photo }: CandidateBoard, settings: Settings): ForecastOptions => ({
  ...forecastQuestion(photo ?? unmarked, settings),
  places: 1,
});
