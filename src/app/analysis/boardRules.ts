import type { ArrangeRules } from '../../core/board/arrange/arrangeRules.js';
import type { BoardPair, Photo, Settings } from '../state/project.js';

/**
 * What the maker insists on, for boards numbered as in `ids`.
 *
 * @param ids the boards' photos in the order of the joint table.
 */
export function boardRules(
  ids: readonly string[],
  photos: readonly Photo[],
  pairs: readonly BoardPair[],
  { layBoards, heartSides, planeOneWay }: Settings,
): ArrangeRules {
  const byId = new Map(photos.map((photo) => [photo.id, photo]));
  const at = (place: Photo['boardPlace']) => {
    const photo = photos.find(({ boardPlace }) => boardPlace === place);
    return photo ? ids.indexOf(photo.id) : null;
  };
  const numbered = pairs.flatMap(({ ids: [p, q], kind }) => {
    const boards = [ids.indexOf(p), ids.indexOf(q)] as const;
    return boards.includes(-1) ? [] : [{ kind, boards }];
  });
  return {
    top: at('top'),
    bottom: at('bottom'),
    together: numbered.flatMap(({ kind, boards }) => (kind === 'beside' ? [boards] : [])),
    heart: heartSides,
    heartFaces: ids.map((id) => byId.get(id)?.heartFace ?? null),
    planing: planeOneWay ? 'oneWay' : 'free',
    planingDirections: ids.map((id) => byId.get(id)?.planes ?? null),
    asGrown: layBoards === 'asGrown',
    matched: numbered.flatMap(({ kind, boards }) => (kind === 'beside' ? [] : [{ kind, boards }])),
  };
}
