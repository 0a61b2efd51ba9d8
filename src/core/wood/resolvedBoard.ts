import type { BoardSpec, KnotSpec } from './boardSpec.js';
import type { WoodCharacter } from './woodCharacter.js';

/** A board with every quantity settled. Angles in radians, taper as a slope. */
export interface ResolvedBoard {
  readonly spec: BoardSpec;
  readonly character: WoodCharacter;
  readonly treeSeed: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly pithYMm: number;
  readonly pithDepthMm: number;
  readonly slopeInFaceRad: number;
  readonly slopeInDepthRad: number;
  readonly aroundStemRad: number;
  readonly stationMm: number;
  readonly ringWidthMm: number;
  readonly ringWidthLogSd: number;
  readonly taper: number;
  readonly spiralRad: number;
  readonly waviness: number;
  readonly contrast: number;
  readonly texture: number;
  readonly baseColour: readonly [number, number, number];
  readonly knots: readonly Required<KnotSpec>[];
}
