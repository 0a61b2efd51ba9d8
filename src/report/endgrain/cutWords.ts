import type { CutShares } from '../../core/results/compareResult.js';

/** One cut class as it is named and drawn. */
export interface CutWord {
  readonly name: keyof CutShares;
  /** From this ring angle on, deg. */
  readonly fromDeg: number;
  /** sRGB; greens and straw, apart from the scale of visibility. */
  readonly colour: string;
  /** Lines across the colour stand as the rings do, deg: it reads in black and white too. */
  readonly lineDeg: number;
}

/** The three classes, flattest first. */
export const cutWords: readonly CutWord[] = [
  { name: 'flatsawn', fromDeg: 0, colour: '#ecd68f', lineDeg: 0 },
  { name: 'rift', fromDeg: 30, colour: '#a9bd6e', lineDeg: 45 },
  { name: 'quartered', fromDeg: 60, colour: '#4f8d68', lineDeg: 90 },
];

/** The class of a ring angle, 0 to 90 deg. */
export const cutWordOf = (deg: number): CutWord => cutWords[deg < 30 ? 0 : deg < 60 ? 1 : 2]!;
