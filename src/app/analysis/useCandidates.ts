import { useEffect, useEffectEvent, useState } from 'react';
import type { Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { useWorkbench } from '../state/workbench.js';
import type { CandidateBoard } from './candidateBoards.js';
import type { CandidateReading } from './candidateReading.js';
import { knownCandidates as known, makeRoomForCandidates } from './knownCandidates.js';
import { isLookedAt, lookAtCandidate, lookKeysOf } from './lookAtCandidate.js';
import { readRings, ringsKeyOf, ringsOfCandidate } from './ringsOfCandidate.js';

/** One thing that is still to be read of one candidate. */
interface Step {
  readonly key: string;
  readonly name: string;
  readonly doing: string;
  run(signal: AbortSignal, tell: (fraction: number) => void): Promise<void>;
}

/** What is read of the candidates so far. */
export interface ReadCandidates {
  readonly readings: readonly CandidateReading[];
  /** The reading was stopped, or failed: goes on where it was. Null while it runs or is done. */
  readonly goOn: (() => void) | null;
}

/**
 * What every rip across each candidate would cost and, where it is wanted, the best place for the
 * front; then how their rings stand. One after the other, with its progress in the working bar.
 */
export function useCandidates(
  boards: readonly CandidateBoard[],
  settings: Settings,
): ReadCandidates {
  const [, setCount] = useState(0);
  const [stopped, setStopped] = useState(false);
  const steps = stepsFor(boards, settings);
  const step = stopped ? undefined : steps[0];
  const key = step?.key ?? null;
  const run = useEffectEvent((signal: AbortSignal) => {
    const total = 2 * boards.length;
    const done = total - steps.length;
    const { name, doing } = step!;
    const tell = (fraction: number) => {
      if (signal.aborted) return;
      const running = { question: key!, label: name, doing, fraction: (done + fraction) / total };
      useWorkbench.setState({ running: { ...running, cancel: () => setStopped(true) } });
    };
    tell(0);
    makeRoomForCandidates();
    return step!.run(signal, tell);
  });
  useEffect(() => {
    if (key === null) return;
    const stop = new AbortController();
    run(stop.signal)
      .then(() => !stop.signal.aborted && setCount((count) => count + 1))
      .catch((thrown) => {
        if (stop.signal.aborted) return;
        setStopped(true);
        tellProblem(thrown, 'Reading the candidates');
      });
    return () => {
      stop.abort();
      useWorkbench.setState(({ running }) => (running?.question === key ? { running: null } : {}));
    };
  }, [key]);
  return {
    goOn: stopped && steps.length > 0 ? () => setStopped(false) : null,
    readings: boards.map((board) => {
      const keys = lookKeysOf(board, settings);
      const face = known.faces.get(keys.curve);
      return {
        curve: known.curves.get(keys.curve) ?? null,
        front: keys.front === null ? null : (known.fronts.get(keys.front) ?? null),
        notes: face?.notes ?? [],
        heightMm: face?.heightMm ?? null,
        rings: ringsOfCandidate(board),
      };
    }),
  };
}

/** First what ranks all of them, then what else is to be known. */
function stepsFor(boards: readonly CandidateBoard[], settings: Settings): readonly Step[] {
  const doing =
    settings.candidatesFor === 'front' ? 'trying every place for the front' : 'trying every rip';
  const looks = boards.flatMap((board) => {
    const keys = lookKeysOf(board, settings);
    if (isLookedAt(keys)) return [];
    const run: Step['run'] = (...how) => lookAtCandidate(board, settings, ...how);
    return [{ key: JSON.stringify(keys), name: board.name, doing, run }];
  });
  const rings = boards.flatMap((board) => {
    if (ringsOfCandidate(board)) return [];
    const run: Step['run'] = (...how) => readRings(board, ...how);
    return [{ key: ringsKeyOf(board), name: board.name, doing: 'looking at its rings', run }];
  });
  return [...looks, ...rings];
}
