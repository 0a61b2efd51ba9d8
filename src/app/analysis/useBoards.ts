import { useEffect, useEffectEvent, useState } from 'react';
import { type PanelOnShelf, panelKey, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { tellProblem } from '../state/tell.js';

/** The boards' pictures by photo, all at the density of the coarsest; null until they are ready. */
export function useBoards(photos: readonly Photo[]): ReadonlyMap<string, PanelOnShelf> | null {
  const [boards, setBoards] = useState<ReadonlyMap<string, PanelOnShelf> | null>(null);
  const key = photos.map(panelKey).sort().join(' ');
  const load = useEffectEvent(async () => {
    const first = await Promise.all(photos.map((photo) => panelOf(photo)));
    const common = Math.min(...first.map(({ panel }) => panel.pxPerMm));
    const all = await Promise.all(
      photos.map((photo, index) => {
        const ready = first[index]!;
        return ready.panel.pxPerMm === common ? ready : panelOf(photo, common);
      }),
    );
    return new Map(photos.map(({ id }, index) => [id, all[index]!]));
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is all that they depend on
  useEffect(() => {
    let dropped = false;
    load()
      .then((ready) => !dropped && setBoards(ready))
      .catch((thrown) => !dropped && tellProblem(thrown, 'Reading the boards'));
    return () => {
      dropped = true;
    };
  }, [key]);
  return boards && photos.every(({ id }) => boards.has(id)) ? boards : null;
}
