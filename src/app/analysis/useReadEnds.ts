import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';

/**
 * The photos that show a board's end as far as is known: read under End grain with rings found,
 * marked there by hand, or named as an end already.
 */
export function useReadEnds(photos: readonly Photo[]): readonly Photo[] {
  const read = useWorkbench(({ ends }) => ends);
  const named = new Set(photos.map(({ endId }) => endId));
  return photos.filter(
    ({ id, scale, ringTangents }) =>
      scale &&
      (named.has(id) || ringTangents.length > 0 || (read[id]?.result.ringAngle.length ?? 0) > 0),
  );
}
