/** What the eye catches at a joint. */
export type Cue = 'break' | 'direction' | 'spacing' | 'colour' | 'glueLine';

/** How visible, in the five words used everywhere. */
export type VisibilityWord =
  | 'disappears'
  | 'only if told'
  | 'if you look for it'
  | 'shows'
  | 'jumps out';

/** Visibility of one joint at the viewing distance; V = 1 is just visible. */
export interface VisibilityResult {
  readonly v: number | null;
  /** P(seen) = 1 - 2^(-V^3). */
  readonly pSeen: number | null;
  /** The largest distance with V = 1; null when V < 1 already at the nearest distance, or untold. */
  readonly vanishesAtMm: number | null;
  readonly cue: Cue | null;
  readonly word: VisibilityWord | null;
}
