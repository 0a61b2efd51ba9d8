import { noRules, planesTowards } from '../../core/board/arrange/arrangeRules.js';
import type { Photo } from './project.js';

type Direction = NonNullable<Photo['planes']>;
type Lie = Pick<Photo, 'turned' | 'backUp'>;

/** The way a board planes as it lies on the page, from the way it planes as photographed. */
export function asItLies(planes: Direction, { turned, backUp }: Lie): Direction {
  const rules = { ...noRules, planingDirections: [planes] };
  return planesTowards(rules, { board: 0, face: backUp ? 'B' : 'A', turned }) ?? planes;
}

/** The other way about; turning and turning over undo themselves. */
export const asPhotographed = asItLies;
