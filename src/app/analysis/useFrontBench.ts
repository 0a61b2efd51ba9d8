import { useEffect, useEffectEvent, useRef, useState } from 'react';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { type FrontBench, openFrontBench } from '../worker/frontBench.js';
import type { FrontAnswer, FrontQuestion } from '../worker/frontMessages.js';
import { scoreQuestion } from './scoreQuestion.js';

/** A front that has not moved for so long is judged exactly where it lies. */
const restMs = 160;

/** What is known of the front's place and of every rip. */
export interface TriedFront {
  readonly answer: FrontAnswer | null;
  readonly curve: readonly RipCost[] | null;
}

/** Judges the front at its place, live while it is dragged, and every rip across the panel. */
export function useFrontBench(
  photo: Photo,
  panel: PanelOnShelf | null,
  place: FrontPlace | null,
  settings: Settings,
): TriedFront {
  const { kerfMm, dressMm, distanceMm, frontWidthMm, frontHeightMm, endPieces } = settings;
  const [answer, setAnswer] = useState<FrontAnswer | null>(null);
  const [curve, setCurve] = useState<readonly RipCost[] | null>(null);
  const bench = useRef<FrontBench | null>(null);
  const { leftOut } = scoreQuestion(photo, settings);
  const leftOutKey = JSON.stringify(leftOut);
  const question: FrontQuestion | null = place && {
    place: { ...place, widthMm: frontWidthMm, heightMm: frontHeightMm },
    loss: { kerfMm, dressMm },
    ends: endPieces === 'slide' ? 'close' : 'stay',
    rough: false,
  };
  const questionKey = JSON.stringify(question);
  const askFront = useEffectEvent((rough: boolean) => {
    if (question) bench.current?.askFront({ ...question, rough });
  });
  const askCurve = useEffectEvent(() => bench.current?.askCurve({ kerfMm, dressMm }));
  const open = useEffectEvent((on: PanelOnShelf) =>
    openFrontBench(
      { photo: on.panel, distanceMm, leftOut },
      {
        onCurve: (_, all) => setCurve(all),
        onFront(judged) {
          // tests/e2e/rip.test.ts counts these: how many answers a drag gets in a second.
          performance.mark('front judged');
          setAnswer(judged);
        },
        onProblem: (message) => tellProblem(new Error(message), 'Trying the front'),
      },
    ),
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the keys are all that the panel's reading depends on
  useEffect(() => {
    if (!panel) return;
    const opened = open(panel);
    bench.current = opened;
    askFront(false);
    askCurve();
    return () => {
      opened.close();
      bench.current = null;
    };
  }, [panel, distanceMm, leftOutKey]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when the question changes
  useEffect(() => {
    askFront(true);
    const atRest = setTimeout(() => askFront(false), restMs);
    return () => clearTimeout(atRest);
  }, [questionKey]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when the loss changes
  useEffect(() => {
    askCurve();
  }, [kerfMm, dressMm]);
  return { answer, curve };
}
