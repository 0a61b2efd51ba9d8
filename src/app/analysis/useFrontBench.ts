import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { SeamgrainError } from '../../core/errors.js';
import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { type FrontBench, openFrontBench } from '../worker/frontBench.js';
import type { FrontAnswer, FrontQuestion } from '../worker/frontMessages.js';
import { forecastQuestion } from './forecastQuestion.js';

/** A front that has not moved for so long is judged exactly where it lies. */
const restMs = 160;

/** The search for the best places. */
export type PlaceSearch =
  | { readonly state: 'notAsked' }
  | { readonly state: 'searching'; readonly fraction: number; readonly what: string }
  | { readonly state: 'found'; readonly places: readonly ForecastPlacement[] };

/** What is known of the front's place, of every rip and of the best places. */
export interface TriedFront {
  readonly answer: FrontAnswer | null;
  /** The answer is exact and for the place where the front lies now. */
  readonly fresh: boolean;
  readonly curve: readonly RipCost[] | null;
  readonly search: PlaceSearch;
  /** What is to be known of the photo before its answers are believed. */
  readonly notes: readonly string[];
  findPlaces(): void;
  stopSearch(): void;
}

const notAsked: PlaceSearch = { state: 'notAsked' };

/**
 * Judges the front at its place, live while it is dragged, and every rip across the panel.
 * @param held the front is being dragged: the exact answer waits until it is let go
 */
export function useFrontBench(
  photo: Photo,
  panel: PanelOnShelf | null,
  place: FrontPlace | null,
  settings: Settings,
  held: boolean,
): TriedFront {
  const [answer, setAnswer] = useState<FrontAnswer | null>(null);
  const [curve, setCurve] = useState<readonly RipCost[] | null>(null);
  const [search, setSearch] = useState<PlaceSearch>(notAsked);
  const [notes, setNotes] = useState<readonly string[]>([]);
  const [opened, setOpened] = useState(0);
  const bench = useRef<FrontBench | null>(null);
  const options = forecastQuestion(photo, settings);
  const { kerfMm, dressMm, distanceMm, ends, leftOut, front } = options;
  const question: FrontQuestion | null = place &&
    front && { place: { ...place, ...front }, loss: { kerfMm, dressMm }, ends, rough: false };
  const askFront = useEffectEvent((rough: boolean) => {
    if (question) bench.current?.askFront({ ...question, rough });
  });
  const askCurve = useEffectEvent(() => bench.current?.askCurve({ kerfMm, dressMm }));
  const open = useEffectEvent((on: PanelOnShelf) =>
    openFrontBench(
      { photo: on.panel, distanceMm, leftOut },
      {
        onReady: setNotes,
        onCurve: (_, all) => setCurve(all),
        onFront(judged) {
          // tests/e2e/rip.test.ts counts these: how many answers a drag gets in a second.
          performance.mark('front judged');
          setAnswer(judged);
        },
        onPlaces: (places) => setSearch({ state: 'found', places }),
        onProgress: (fraction, what) => setSearch({ state: 'searching', fraction, what }),
        onProblem(message, of) {
          if (of === 'places') setSearch(notAsked);
          tellProblem(new SeamgrainError('cannotDo', message), 'Trying the front');
        },
      },
    ),
  );
  const leftOutKey = JSON.stringify(leftOut);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the keys are all that the panel's reading depends on
  useEffect(() => {
    if (!panel) return;
    const fresh = open(panel);
    bench.current = fresh;
    askFront(false);
    askCurve();
    return () => {
      fresh.close();
      bench.current = null;
    };
  }, [panel, distanceMm, leftOutKey, opened]);
  const questionKey = JSON.stringify(question);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when the question changes
  useEffect(() => {
    askFront(true);
    if (held) return;
    const atRest = setTimeout(() => askFront(false), restMs);
    return () => clearTimeout(atRest);
  }, [questionKey, held]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when the loss changes
  useEffect(() => {
    askCurve();
  }, [kerfMm, dressMm]);
  const optionsKey = JSON.stringify(options);
  // biome-ignore lint/correctness/useExhaustiveDependencies: places found for another question are no answer
  useEffect(() => setSearch(notAsked), [optionsKey]);
  return {
    answer,
    fresh: answer !== null && JSON.stringify(answer.question) === questionKey,
    curve,
    search,
    notes,
    findPlaces() {
      setSearch({ state: 'searching', fraction: 0, what: 'trying every place' });
      bench.current?.askPlaces(options);
    },
    stopSearch() {
      setSearch(notAsked);
      setOpened(opened + 1);
    },
  };
}
