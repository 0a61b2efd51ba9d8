import { useEffect, useEffectEvent, useState } from 'react';
import type { RipCost } from '../../core/rip/ripCurve.js';
import { panelKey, panelOf } from '../images/shelf.js';
import type { Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { openFrontBench } from '../worker/frontBench.js';
import { scoreQuestion } from './scoreQuestion.js';

const known = new Map<string, readonly RipCost[]>();
const most = 60;

/** What every rip across each photo's panel would cost, one panel after the other; null: not yet. */
export function useCurves(
  photos: readonly Photo[],
  settings: Settings,
): readonly (readonly RipCost[] | null)[] {
  const [, setCount] = useState(0);
  const { kerfMm, dressMm, distanceMm } = settings;
  const keys = photos.map((photo) => {
    const { leftOut } = scoreQuestion(photo, settings);
    return JSON.stringify([panelKey(photo), kerfMm, dressMm, distanceMm, leftOut]);
  });
  const missing = keys.findIndex((key) => !known.has(key));
  const missingKey = keys[missing] ?? null;
  const read = useEffectEvent(async (isDropped: () => boolean) => {
    const photo = photos[missing]!;
    const { panel } = await panelOf(photo);
    if (isDropped()) return null;
    const { leftOut } = scoreQuestion(photo, settings);
    let close = () => {};
    const curve = new Promise<readonly RipCost[]>((resolve, reject) => {
      const bench = openFrontBench(
        { photo: panel, distanceMm, leftOut },
        {
          onCurve: (_, all) => resolve(all),
          onFront: () => {},
          onPlaces: () => {},
          onProgress: () => {},
          onProblem: (message) => reject(new Error(message)),
        },
      );
      close = bench.close;
      bench.askCurve({ kerfMm, dressMm });
    });
    return { curve: curve.finally(() => close()), close: () => close() };
  });
  useEffect(() => {
    if (missingKey === null) return;
    let dropped = false;
    let close = () => {};
    const work = async () => {
      const reading = await read(() => dropped);
      if (!reading) return;
      close = reading.close;
      const curve = await reading.curve;
      if (known.size > most) known.clear();
      known.set(missingKey, curve);
      if (!dropped) setCount((count) => count + 1);
    };
    work().catch((thrown) => !dropped && tellProblem(thrown, 'Trying the rips'));
    return () => {
      dropped = true;
      close();
    };
  }, [missingKey]);
  return keys.map((key) => known.get(key) ?? null);
}
