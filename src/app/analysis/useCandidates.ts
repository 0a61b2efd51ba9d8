import { useEffect, useEffectEvent, useState } from 'react';
import { comparedFront } from '../../core/pipeline/comparePanels.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import { panelKey, panelOf } from '../images/shelf.js';
import type { Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { type FrontBench, openFrontBench } from '../worker/frontBench.js';
import { forecastQuestion } from './forecastQuestion.js';
import type { CandidateReading, FrontReading } from './rankCandidates.js';

const knownCurves = new Map<string, readonly RipCost[]>();
const knownNotes = new Map<string, readonly string[]>();
const knownFronts = new Map<string, FrontReading>();
const most = 60;

/** One photo's questions, as keys of what is known. */
interface Keys {
  readonly curve: string;
  /** null: no front is wanted. */
  readonly front: string | null;
}

/**
 * What every rip across each photo's panel would cost and, where it is wanted, the best place for
 * the front; one panel after the other.
 */
export function useCandidates(
  photos: readonly Photo[],
  settings: Settings,
): readonly CandidateReading[] {
  const [, setCount] = useState(0);
  const withFront = settings.candidatesFor === 'front';
  const keys = photos.map((photo) => keysOf(photo, settings, withFront));
  const missing = keys.findIndex((key) => !isKnown(key));
  const missingKey = missing < 0 ? null : JSON.stringify(keys[missing]);
  const read = useEffectEvent((signal: AbortSignal) =>
    readCandidate(photos[missing]!, settings, keys[missing]!, signal),
  );
  useEffect(() => {
    if (missingKey === null) return;
    const stop = new AbortController();
    read(stop.signal)
      .then(() => !stop.signal.aborted && setCount((count) => count + 1))
      .catch((thrown) => !stop.signal.aborted && tellProblem(thrown, 'Trying the rips'));
    return () => stop.abort();
  }, [missingKey]);
  return keys.map(({ curve, front }) => ({
    curve: knownCurves.get(curve) ?? null,
    notes: knownNotes.get(curve) ?? [],
    front: front === null ? null : (knownFronts.get(front) ?? null),
  }));
}

function keysOf(photo: Photo, settings: Settings, withFront: boolean): Keys {
  const question = forecastQuestion(photo, settings);
  const { kerfMm, dressMm, distanceMm, leftOut } = question;
  const curve = JSON.stringify([panelKey(photo), kerfMm, dressMm, distanceMm, leftOut]);
  return { curve, front: withFront ? JSON.stringify([panelKey(photo), question]) : null };
}

const isKnown = ({ curve, front }: Keys) =>
  knownCurves.has(curve) && (front === null || knownFronts.has(front));

/** Reads one panel in a worker of its own and keeps what is still to be known of it. */
async function readCandidate(
  photo: Photo,
  settings: Settings,
  keys: Keys,
  signal: AbortSignal,
): Promise<void> {
  const { panel } = await panelOf(photo);
  if (signal.aborted) return;
  const question = { ...forecastQuestion(photo, settings), places: 1 };
  const { kerfMm, dressMm, distanceMm, leftOut } = question;
  if (Math.max(knownCurves.size, knownFronts.size) > most) {
    knownCurves.clear();
    knownNotes.clear();
    knownFronts.clear();
  }
  let bench: FrontBench | null = null;
  const reading = new Promise<void>((resolve, reject) => {
    const doneWhenKnown = () => isKnown(keys) && resolve();
    const keepFront = (front: FrontReading) => {
      if (keys.front !== null) knownFronts.set(keys.front, front);
      doneWhenKnown();
    };
    bench = openFrontBench(
      { photo: panel, distanceMm, leftOut },
      {
        onReady: (notes) => knownNotes.set(keys.curve, notes),
        onCurve(_, curve) {
          knownCurves.set(keys.curve, curve);
          doneWhenKnown();
        },
        onFront: () => {},
        onPlaces(places) {
          const place = comparedFront(places[0]);
          keepFront(place ? { place } : { place: null, why: 'No place was found for the front.' });
        },
        onProgress: () => {},
        // A front that does not fit leaves the rips to be told.
        onProblem: (message, of) =>
          of === 'places' ? keepFront({ place: null, why: message }) : reject(new Error(message)),
      },
    );
    signal.addEventListener('abort', () => resolve());
    if (!knownCurves.has(keys.curve)) bench.askCurve({ kerfMm, dressMm });
    if (keys.front !== null && !knownFronts.has(keys.front)) bench.askPlaces(question);
  });
  try {
    await reading;
  } finally {
    (bench as FrontBench | null)?.close();
  }
}
