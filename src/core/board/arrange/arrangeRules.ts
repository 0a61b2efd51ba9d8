import type { BoardFace } from './boardPhotos.js';

/** Along the board as photographed, face A up: the way a plane cuts without tearing out. */
export type PlaningDirection = 'left' | 'right';

/** Two boards resawn from one, laid as a matched pair. */
export interface MatchedPair {
  readonly kind: 'book' | 'slip';
  readonly boards: readonly [number, number];
}

/** What the maker insists on. Boards are numbered from 0 in the order given. */
export interface ArrangeRules {
  /** This board lies at the top, at the bottom; null: any. */
  readonly top: number | null;
  readonly bottom: number | null;
  /** Boards that lie next to each other. */
  readonly together: readonly (readonly [number, number])[];
  /** Show heart sides only, or heart and bark side by turns. */
  readonly heart: 'free' | 'up' | 'alternating';
  /** Which face of each board looked to the heart of the tree; null unknown. */
  readonly heartFaces: readonly (BoardFace | null)[];
  /** Lay all boards so that they plane the same way. */
  readonly planing: 'free' | 'oneWay';
  readonly planingDirections: readonly (PlaningDirection | null)[];
  /** Boards that look like one face cut up are laid as they grew, whatever their joints show. */
  readonly asGrown: boolean;
  /** Matched pairs; the first one's joint becomes the panel's middle. */
  readonly matched: readonly MatchedPair[];
}

/** Nothing is insisted on and nothing known. */
export const noRules: ArrangeRules = {
  top: null,
  bottom: null,
  together: [],
  heart: 'free',
  heartFaces: [],
  planing: 'free',
  planingDirections: [],
  asGrown: true,
  matched: [],
};

/**
 * The way a board planes as it lies: turning it end for end or face for face reverses it.
 *
 * @returns null where its direction is not known.
 */
export function planesTowards(
  rules: ArrangeRules,
  way: { readonly board: number; readonly face: BoardFace; readonly turned: boolean },
): PlaningDirection | null {
  const direction = rules.planingDirections[way.board] ?? null;
  if (direction === null || way.turned === (way.face === 'B')) return direction;
  return direction === 'left' ? 'right' : 'left';
}

/** Whether the heart side shows; null where it is not known. */
export function showsHeart(
  rules: ArrangeRules,
  way: { readonly board: number; readonly face: BoardFace },
): boolean | null {
  const heart = rules.heartFaces[way.board] ?? null;
  return heart === null ? null : heart === way.face;
}
