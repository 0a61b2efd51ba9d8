import type { BoardSpec } from '../src/core/wood/boardSpec.js';
import type { EndGrainSpec } from '../src/core/wood/endGrainSpec.js';
import { mixedBoardsPanel } from '../src/core/wood/mixedBoardsPanel.js';
import type { PanelSpec } from '../src/core/wood/panelSpec.js';

/** What jointing took from each edge of the boards that once were one plank. */
export const jointMm = 1;

const plank: BoardSpec = {
  seed: 63,
  setting: 'ring-porous',
  cut: 'flatsawn',
  lengthMm: 440,
  widthMm: 326,
  pithYMm: 180,
  pithDepthMm: 75,
  slopeInDepthDeg: 1.3,
};
const stranger: BoardSpec = { seed: 88, setting: 'ring-porous', cut: 'rift', ringWidthMm: 2.3 };

const size = { lengthMm: 440, heightMm: 80 };

/** A board on the bench: which strip of the plank it was (0 = top; null = another tree). */
export interface BoardSample {
  readonly name: string;
  readonly strip: number | null;
  readonly turned: boolean;
  readonly spec: PanelSpec;
}

function board(name: string, strip: number | null, turned: boolean): BoardSample {
  const vMm = strip === null ? 60 : strip * (size.heightMm + 2 * jointMm);
  return {
    name,
    strip,
    turned,
    spec: mixedBoardsPanel({
      widthMm: size.lengthMm,
      boards: [
        {
          board: strip === null ? stranger : plank,
          heightMm: size.heightMm,
          uMm: strip === null ? 100 : 0,
          vMm,
          turned,
        },
      ],
    }),
  };
}

/** Four boards of one plank, shuffled and partly turned end for end, and a stranger. */
export const boardSamples: readonly BoardSample[] = [
  board('board-1', 2, false),
  board('board-2', 0, true),
  board('board-3', 3, false),
  board('board-4', 1, true),
  board('board-5', null, false),
];

/** The end of the plank's neighbour in the stack, as the crosscut left it. */
export const endSample: { readonly name: string; readonly spec: EndGrainSpec } = {
  name: 'end-grain',
  spec: {
    board: {
      seed: 72,
      setting: 'ring-porous',
      cut: 'flatsawn',
      widthMm: 168,
      thicknessMm: 34,
      pithYMm: 101,
      pithDepthMm: 61,
      ringWidthMm: 1.9,
    },
    atMm: 40,
    sawMarks: 0.6,
    stain: 0.3,
    cracks: 1,
  },
};
