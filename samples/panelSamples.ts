import type { BoardSpec } from '../src/core/wood/boardSpec.js';
import { drawerFrontPanel } from '../src/core/wood/drawerFrontPanel.js';
import { mixedBoardsPanel } from '../src/core/wood/mixedBoardsPanel.js';
import { onePiecePanel } from '../src/core/wood/onePiecePanel.js';
import type { PanelSpec } from '../src/core/wood/panelSpec.js';
import { ripPanel } from '../src/core/wood/ripPanel.js';

/** One photographed panel of the story. */
export interface PanelSample {
  readonly name: string;
  readonly verb: 'score' | 'forecast';
  readonly spec: PanelSpec;
  /** Scale at which the panel is drawn before it is photographed, px/mm. */
  readonly pxPerMm: number;
  readonly view: {
    readonly yawDeg: number;
    readonly pitchDeg: number;
    readonly rollDeg: number;
    readonly lightAcross: number;
    readonly lightDown: number;
    readonly whiteBalance: readonly [number, number, number];
  };
  /** Further words for the command line. */
  readonly options?: readonly string[];
}

const kerfMm = 3.175;
const dressMm = 0.4;
const rip = { lostMm: kerfMm + 2 * dressMm, glueWidthMm: 0.08, glueContrast: 0.22 };

const flatsawnOak: BoardSpec = {
  seed: 41,
  setting: 'ring-porous',
  cut: 'flatsawn',
  lengthMm: 460,
  widthMm: 236,
  pithYMm: 178,
  pithDepthMm: 44,
  slopeInDepthDeg: 2.7,
  ringWidthMm: 2.1,
  contrast: 1.25,
};

const quarteredOak: BoardSpec = {
  seed: 23,
  setting: 'ring-porous',
  cut: 'quartered',
  lengthMm: 460,
  widthMm: 236,
  slopeInFaceDeg: 0.3,
  ringWidthMm: 1.5,
  waviness: 0.7,
};

const pine: BoardSpec = {
  seed: 17,
  setting: 'softwood',
  cut: 'flatsawn',
  lengthMm: 520,
  widthMm: 240,
  pithYMm: 128,
  pithDepthMm: 52,
  slopeInDepthDeg: 1.4,
};

const maple: BoardSpec = {
  seed: 29,
  setting: 'diffuse-porous',
  cut: 'flatsawn',
  lengthMm: 520,
  widthMm: 220,
  pithYMm: 96,
  pithDepthMm: 60,
  slopeInDepthDeg: -1.5,
  contrast: 1.2,
};

/** The panels of the commission, in the order of the story (samples/README.md). */
export const panelSamples: readonly PanelSample[] = [
  {
    name: 'uncut-maple',
    verb: 'forecast',
    spec: onePiecePanel({ board: maple, widthMm: 520, heightMm: 220 }),
    pxPerMm: 6,
    view: {
      yawDeg: 3,
      pitchDeg: -5,
      rollDeg: 0.6,
      lightAcross: -0.18,
      lightDown: 0.1,
      whiteBalance: [1.03, 1, 0.96],
    },
    options: ['--front', '280mmx90mm', '--rip', '70mm', '--rip', '163mm'],
  },
  {
    name: 'dry-clamp-flatsawn',
    verb: 'score',
    spec: ripPanel({
      board: flatsawnOak,
      widthMm: 460,
      heightMm: 236 - 2 * rip.lostMm,
      cuts: [
        { atMm: 62, ...rip },
        { atMm: 157, ...rip },
      ],
    }),
    pxPerMm: 6,
    view: {
      yawDeg: -4,
      pitchDeg: -6,
      rollDeg: -0.8,
      lightAcross: 0.22,
      lightDown: -0.08,
      whiteBalance: [1.05, 1, 0.92],
    },
  },
  {
    name: 'dry-clamp-quartered',
    verb: 'score',
    spec: ripPanel({
      board: quarteredOak,
      widthMm: 460,
      heightMm: 236 - 2 * rip.lostMm,
      cuts: [
        { atMm: 62, ...rip, glueWidthMm: 0.05, glueContrast: 0.15 },
        { atMm: 157, ...rip, glueWidthMm: 0.05, glueContrast: 0.15 },
      ],
    }),
    pxPerMm: 6,
    view: {
      yawDeg: 3,
      pitchDeg: -4,
      rollDeg: 0.5,
      lightAcross: 0.15,
      lightDown: 0.1,
      whiteBalance: [1.02, 1, 0.97],
    },
  },
  {
    name: 'drawer-front-pine',
    verb: 'score',
    spec: drawerFrontPanel({
      board: pine,
      lengthMm: 520,
      widthMm: 240,
      front: { xMm: 120, yMm: 74, widthMm: 280, heightMm: 92 },
      kerfMm,
      dressMm,
      ends: 'slideIn',
      revealMm: 0.9,
      glueWidthMm: 0.08,
      glueContrast: 0.25,
    }),
    pxPerMm: 5,
    view: {
      yawDeg: 5,
      pitchDeg: -7,
      rollDeg: 1,
      lightAcross: -0.2,
      lightDown: 0.16,
      whiteBalance: [1.04, 1, 0.94],
    },
  },
  {
    name: 'mixed-boards',
    verb: 'score',
    spec: mixedBoardsPanel({
      widthMm: 440,
      boards: [
        {
          board: { seed: 51, setting: 'ring-porous', cut: 'rift' },
          heightMm: 68,
          uMm: 60,
          vMm: 40,
        },
        {
          board: { seed: 52, setting: 'ring-porous', cut: 'flatsawn' },
          heightMm: 80,
          uMm: 90,
          vMm: 60,
        },
        {
          board: { seed: 53, setting: 'ring-porous', cut: 'quartered' },
          heightMm: 66,
          uMm: 20,
          vMm: 70,
          colourShift: { dL: -3.5, da: 1.2, db: 1 },
        },
      ],
      glueWidthMm: 0.1,
      glueContrast: 0.25,
    }),
    pxPerMm: 6,
    view: {
      yawDeg: -2,
      pitchDeg: 5,
      rollDeg: -0.6,
      lightAcross: 0.2,
      lightDown: 0.12,
      whiteBalance: [1, 1, 1],
    },
  },
];
