import type { WoodSetting } from './woodSetting.js';

/**
 * What makes a setting look as it does. Optical density is the natural log of how much light the
 * wood takes away from its palest colour; `absorption` says how much each channel loses of it.
 */
export interface WoodCharacter {
  readonly baseColours: readonly (readonly [number, number, number])[];
  readonly absorption: readonly [number, number, number];
  readonly ringWidthMm: readonly [number, number];
  /** Density between the palest and the darkest wood of a ring. */
  readonly ringDensity: number;
  /** Density scatter of single fibre streaks. */
  readonly fibreDensity: number;
  /** Density scatter of slow colour drift. */
  readonly driftDensity: number;
  /** Serration of ring edges along the fibre, mm. */
  readonly serrationMm: number;
  readonly pores: readonly PoreKind[];
  readonly rays: RayKind | null;
}

/** Vessels or resin ducts as they show on a long face: thin dashes along the fibre. */
export interface PoreKind {
  readonly where: 'early' | 'late' | 'everywhere';
  /** Dashes per mm2 where they are at home. */
  readonly perMm2: number;
  readonly diameterMm: readonly [number, number];
  readonly lengthMm: readonly [number, number];
  readonly density: readonly [number, number];
}

/** Rays: thin upright sheets from pith to bark. */
export interface RayKind {
  /** Rays per mm2 of a tangential face. */
  readonly perMm2: number;
  readonly heightMm: readonly [number, number];
  readonly thicknessMm: readonly [number, number];
  readonly reachMm: number;
  /** Density on a tangential face (dark dash) and on a radial face (pale fleck, negative). */
  readonly dashDensity: number;
  readonly fleckDensity: number;
}

const ringPorous: WoodCharacter = {
  baseColours: [
    [214, 180, 132],
    [206, 170, 124],
    [217, 178, 138],
    [201, 166, 118],
  ],
  absorption: [0.82, 1, 1.22],
  ringWidthMm: [1.3, 2.1],
  ringDensity: 0.22,
  fibreDensity: 0.05,
  driftDensity: 0.045,
  serrationMm: 0.09,
  pores: [
    {
      where: 'early',
      perMm2: 1.2,
      diameterMm: [0.1, 0.24],
      lengthMm: [1.5, 13],
      density: [0.2, 0.55],
    },
    {
      where: 'everywhere',
      perMm2: 0.35,
      diameterMm: [0.07, 0.14],
      lengthMm: [0.8, 4],
      density: [0.06, 0.2],
    },
  ],
  rays: {
    perMm2: 0.035,
    heightMm: [2, 15],
    thicknessMm: [0.15, 0.5],
    reachMm: 34,
    dashDensity: 0.22,
    fleckDensity: -0.12,
  },
};

const diffusePorous: WoodCharacter = {
  baseColours: [
    [229, 207, 174],
    [222, 197, 164],
    [204, 161, 126],
    [192, 145, 110],
  ],
  absorption: [0.85, 1, 1.15],
  ringWidthMm: [1.4, 2.4],
  ringDensity: 0.19,
  fibreDensity: 0.04,
  driftDensity: 0.04,
  serrationMm: 0.06,
  pores: [
    {
      where: 'everywhere',
      perMm2: 0.8,
      diameterMm: [0.05, 0.1],
      lengthMm: [0.6, 2.6],
      density: [0.06, 0.2],
    },
  ],
  rays: {
    perMm2: 0.7,
    heightMm: [0.5, 1.6],
    thicknessMm: [0.05, 0.09],
    reachMm: 4,
    dashDensity: 0.16,
    fleckDensity: -0.05,
  },
};

const softwood: WoodCharacter = {
  baseColours: [
    [233, 201, 148],
    [228, 190, 138],
    [222, 178, 128],
    [236, 208, 160],
  ],
  absorption: [0.62, 1, 1.55],
  ringWidthMm: [1.5, 2.8],
  ringDensity: 0.46,
  fibreDensity: 0.035,
  driftDensity: 0.04,
  serrationMm: 0.05,
  pores: [
    {
      where: 'late',
      perMm2: 0.02,
      diameterMm: [0.1, 0.2],
      lengthMm: [1, 7],
      density: [0.15, 0.4],
    },
  ],
  rays: null,
};

/** The look of each setting. Values chosen by eye against real boards; no published source. */
export const woodCharacters: Readonly<Record<WoodSetting, WoodCharacter>> = {
  'ring-porous': ringPorous,
  'diffuse-porous': diffusePorous,
  softwood,
};
