import { useEffect, useEffectEvent, useState } from 'react';
import { candidateKey, candidatePanel } from '../images/candidatePanel.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { tellProblem } from '../state/tell.js';
import type { CandidateBoard } from './candidateBoards.js';

/** The candidates' pictures by board, each as soon as it is ready. */
export function useCandidatePanels(
  boards: readonly CandidateBoard[],
): ReadonlyMap<string, PanelOnShelf> {
  const [panels, setPanels] = useState<ReadonlyMap<string, PanelOnShelf>>(new Map());
  const key = boards.map(candidateKey).join(' ');
  const load = useEffectEvent((keep: (key: string, panel: PanelOnShelf) => void) =>
    Promise.all(
      boards.map(async (board) => keep(candidateKey(board), await candidatePanel(board))),
    ),
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is all that they depend on
  useEffect(() => {
    let dropped = false;
    const wanted = new Set(boards.map(candidateKey));
    const keep = (of: string, panel: PanelOnShelf) =>
      setPanels((have) => new Map([...have].filter(([old]) => wanted.has(old))).set(of, panel));
    load((of, panel) => !dropped && keep(of, panel)).catch(
      (thrown) => !dropped && tellProblem(thrown, 'Reading the boards'),
    );
    return () => {
      dropped = true;
    };
  }, [key]);
  return new Map(
    boards.flatMap((board) => {
      const panel = panels.get(candidateKey(board));
      return panel ? [[board.id, panel] as const] : [];
    }),
  );
}
