import { useEffect, useEffectEvent, useState } from 'react';
import { defaultScoreOptions } from '../../core/pipeline/scoreOptions.js';
import type { SeamResult } from '../../core/results/scoreResult.js';
import type { RunningJob } from '../../job/webWorkerClient.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { jobs } from '../worker/jobs.js';
import { joinBoards } from './joinBoards.js';

const measured = new Map<string, SeamResult>();
const most = 400;

/** What a joint between two neighbours depends on. */
export function jointKey(
  upper: Photo,
  lower: Photo,
  boards: ReadonlyMap<string, PanelOnShelf>,
  { distanceMm, kerfMm, jointMm }: Settings,
): string {
  const one = ({ id, turned }: Photo) => `${boards.get(id)?.key} ${turned}`;
  return [one(upper), one(lower), distanceMm, kerfMm, jointMm].join('|');
}

/**
 * The joints that the boards would make as they lie, from the top down: each pair is laid edge to
 * edge and its joint scored by the code that scores a finished panel. null: not measured yet.
 */
export function useJoints(
  photos: readonly Photo[],
  boards: ReadonlyMap<string, PanelOnShelf> | null,
  settings: Settings,
): readonly (SeamResult | null)[] {
  const [, setCount] = useState(0);
  const pairs = photos.slice(1).map((lower, index) => ({ upper: photos[index]!, lower }));
  const keys = boards
    ? pairs.map(({ upper, lower }) => jointKey(upper, lower, boards, settings))
    : [];
  const missing = keys.findIndex((key) => !measured.has(key));
  const missingKey = missing < 0 ? null : keys[missing]!;
  const begin = useEffectEvent(() => {
    const { upper, lower } = pairs[missing]!;
    const laid = ({ id, turned }: Photo) => ({ panel: boards!.get(id)!.panel, turned });
    const { panel, jointYMm } = joinBoards(laid(upper), laid(lower), settings.jointMm);
    const line = { x1Mm: 0, y1Mm: jointYMm, x2Mm: panel.widthMm, y2Mm: jointYMm };
    const { distanceMm, kerfMm } = settings;
    const options = { ...defaultScoreOptions, find: false, distanceMm, kerfMm };
    return jobs.start('score', { photo: panel, options: { ...options, placedSeams: [line] } });
  });
  useEffect(() => {
    if (missingKey === null) return;
    const job: RunningJob<{ readonly seams: readonly SeamResult[] }> = begin();
    let dropped = false;
    job.result
      .then(({ seams }) => {
        if (measured.size > most) measured.clear();
        measured.set(missingKey, seams[0]!);
        if (!dropped) setCount((count) => count + 1);
      })
      .catch((thrown) => !dropped && tellProblem(thrown, 'Measuring a joint'));
    return () => {
      dropped = true;
    };
  }, [missingKey]);
  return pairs.map((_, index) => measured.get(keys[index] ?? '') ?? null);
}
