import type { WoodCut, WoodSetting } from './woodSetting.js';

/** One knot: a branch from the pith outwards, crossing the face at (xMm, yMm). */
export interface KnotSpec {
  readonly xMm: number;
  readonly yMm: number;
  /** Radius of the branch where it meets the face, default 6 mm. */
  readonly radiusMm?: number;
}

/**
 * An imagined board. Everything left out is drawn from the seed, so the same text always gives
 * the same wood.
 *
 * Board frame: x along the length, y across the width, both from the upper left corner of face A,
 * z into the thickness. The board has no end in the model: any face through it can be drawn.
 */
export interface BoardSpec {
  /** Whole number; texture, colour and every quantity left out below follow from it. */
  readonly seed: number;
  /** The tree, when several boards come from one: rings and wander follow this seed instead. */
  readonly treeSeed?: number;
  readonly setting: WoodSetting;
  /** Where the pith lies, roughly; the exact place is drawn from the seed. Default flatsawn. */
  readonly cut?: WoodCut;
  /** Nominal length, default 600 mm. */
  readonly lengthMm?: number;
  /** Nominal width, default 200 mm. */
  readonly widthMm?: number;
  /** Nominal thickness, default 22 mm. */
  readonly thicknessMm?: number;
  /** Pith across the width at mid-length, from the board's upper edge; may lie outside. */
  readonly pithYMm?: number;
  /** Pith below face A at mid-length (negative: above the face); may lie outside. */
  readonly pithDepthMm?: number;
  /** Stem axis against the board's length in the plane of the face, degrees, +x towards +y. */
  readonly slopeInFaceDeg?: number;
  /** Stem axis against the board's length in depth, degrees, +x towards +z. */
  readonly slopeInDepthDeg?: number;
  /** Rotation of the board about the stem, degrees; boards of one tree differ in it. */
  readonly aroundStemDeg?: number;
  /** Station along the stem of the board's middle. */
  readonly stationMm?: number;
  /** Median ring width, 0.4 to 6 mm. */
  readonly ringWidthMm?: number;
  /** Scatter of ring width: standard deviation of its natural log, default 0.33. */
  readonly ringWidthLogSd?: number;
  /** Radius lost per length of stem, mm per m, default 3 to 10. */
  readonly taperMmPerM?: number;
  /** Spiral of the fibre about the stem, degrees, default within +-2. */
  readonly spiralDeg?: number;
  /** Strength of pith wander and ring waviness; 1 as grown, 0 an exact cone. */
  readonly waviness?: number;
  /** Strength of the ring lines against the setting's own, default 1. */
  readonly contrast?: number;
  /** Strength of fibre, pores, rays and colour drift, default 1; 0 leaves bare rings. */
  readonly texture?: number;
  /** sRGB of the palest wood, 0 to 255. */
  readonly baseColour?: readonly [number, number, number];
  readonly knots?: readonly KnotSpec[];
}
