import { useEffect, useEffectEvent, useState } from 'react';
import { type PanelOnShelf, panelKey, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { tellProblem } from '../state/tell.js';

/** The photo's squared-up panel, or null until it is ready; the last one stays while a new one comes. */
export function usePanel(photo: Photo | null): PanelOnShelf | null {
  const [ready, setReady] = useState<PanelOnShelf | null>(null);
  const key = photo?.scale ? panelKey(photo) : null;
  const fetchPanel = useEffectEvent(() => panelOf(photo!));
  useEffect(() => {
    if (key === null) {
      setReady(null);
      return;
    }
    let dropped = false;
    fetchPanel()
      .then((panel) => !dropped && setReady(panel))
      .catch((thrown) => !dropped && tellProblem(thrown, 'Squaring the panel up'));
    return () => {
      dropped = true;
    };
  }, [key]);
  return ready && photo && ready.photoImageId === photo.imageId ? ready : null;
}
