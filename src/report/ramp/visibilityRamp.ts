import type { VisibilityWord } from '../../core/results/visibilityResult.js';

/** How a level is drawn besides its colour, so that it reads in black and white too. */
export type LevelShape = 'hairline' | 'dots' | 'dashes' | 'solid' | 'toothed';

/** One of the five steps of the scale. */
export interface VisibilityLevel {
  readonly word: VisibilityWord;
  /** The step begins at this V (see `levelOfVisibility` for the edges). */
  readonly fromV: number;
  /** sRGB, #rrggbb. */
  readonly colour: string;
  /** Black or white, whichever reads on `colour`. */
  readonly textOnColour: string;
  readonly shape: LevelShape;
  /** Thickness of the drawn band in parts of the thickest one, 0..1. */
  readonly thickness: number;
}

/**
 * The one scale of the product: five words, five colours, five shapes, quiet to loud.
 * The colours run from ice through sky and violet to plum, getting darker with every step: away
 * from the yellow-to-brown of wood, so that each reads on maple and on walnut, to every kind of
 * colour vision. tests/report/visibilityRamp.test.ts measures that.
 */
export const visibilityRamp: readonly VisibilityLevel[] = [
  {
    word: 'disappears',
    fromV: 0,
    colour: '#eefafc',
    textOnColour: '#111111',
    shape: 'hairline',
    thickness: 0.22,
  },
  {
    word: 'only if told',
    fromV: 0.5,
    colour: '#8fdcf7',
    textOnColour: '#111111',
    shape: 'dots',
    thickness: 0.36,
  },
  {
    word: 'if you look for it',
    fromV: 1,
    colour: '#7f93f2',
    textOnColour: '#111111',
    shape: 'dashes',
    thickness: 0.52,
  },
  {
    word: 'shows',
    fromV: 2,
    colour: '#6a45c9',
    textOnColour: '#ffffff',
    shape: 'solid',
    thickness: 0.74,
  },
  {
    word: 'jumps out',
    fromV: 4,
    colour: '#990062',
    textOnColour: '#ffffff',
    shape: 'toothed',
    thickness: 1,
  },
];

/** What the photo cannot tell: hatched in neutral greys, never drawn as good. */
export const cannotTellLook = {
  word: 'cannot tell',
  ground: '#e4e4e4',
  stroke: '#6f6f6f',
} as const;
