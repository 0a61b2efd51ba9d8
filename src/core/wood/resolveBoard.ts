import { createRandom } from '../random/createRandom.js';
import type { RandomSource } from '../random/randomSource.js';
import { radFromDeg } from '../units/radFromDeg.js';
import type { BoardSpec } from './boardSpec.js';
import type { ResolvedBoard } from './resolvedBoard.js';
import { woodCharacters } from './woodCharacter.js';
import type { WoodCut } from './woodSetting.js';

interface Place {
  readonly asideMm: number;
  readonly depthMm: number;
  readonly inFaceDeg: number;
  readonly inDepthDeg: number;
}

/** Where the pith lies from the middle of face A, so that the cut is what it is called. */
function placeForCut(cut: WoodCut, widthMm: number, random: RandomSource): Place {
  const side = random.next() < 0.5 ? -1 : 1;
  const up = random.next() < 0.5 ? -1 : 1;
  const inFaceDeg = random.normal(0, 0.6);
  const lean = up * random.uniform(0.4, 1.9);
  if (cut === 'flatsawn') {
    const depth = random.uniform(35, 95);
    return {
      asideMm: side * random.uniform(0, 1) * Math.min(0.18 * widthMm, 0.5 * depth),
      depthMm: up * depth,
      inFaceDeg,
      inDepthDeg: lean,
    };
  }
  const ringAngle = radFromDeg(cut === 'rift' ? random.uniform(40, 50) : random.uniform(84, 90));
  const radiusMm = widthMm * (cut === 'rift' ? 1 : 0.6) + random.uniform(40, 110);
  return {
    asideMm: side * radiusMm * Math.sin(ringAngle),
    depthMm: up * radiusMm * Math.cos(ringAngle),
    inFaceDeg: side * random.uniform(0, 1.6),
    inDepthDeg: lean * 0.7,
  };
}

/**
 * Settles every quantity that a board's description leaves open, from its seed.
 *
 * The tree's own quantities (ring width, taper, spiral, colour) follow the tree's seed; the
 * board's place in the log follows the board's seed.
 */
export function resolveBoard(spec: BoardSpec): ResolvedBoard {
  const character = woodCharacters[spec.setting];
  const treeSeed = (spec.treeSeed ?? spec.seed) * 31 + spec.setting.length;
  const tree = createRandom(treeSeed ^ 0x5eed);
  const own = createRandom((spec.seed * 31 + spec.setting.length) ^ 0xb0a2d);
  const lengthMm = spec.lengthMm ?? 600;
  const widthMm = spec.widthMm ?? 200;
  const ringWidthMm = tree.uniform(...character.ringWidthMm);
  const taperMmPerM = tree.uniform(3, 10);
  const spiralDeg = tree.normal(0, 0.8);
  const chosen = character.baseColours[tree.integer(character.baseColours.length)]!;
  // Trees of one kind differ a little in lightness and warmth.
  const [light, warm] = [tree.normal(0, 5), tree.normal(0, 3)];
  const baseColour = [
    chosen[0] + light + warm,
    chosen[1] + light,
    chosen[2] + light - warm,
  ] as const;
  const place = placeForCut(spec.cut ?? 'flatsawn', widthMm, own);
  return {
    spec,
    character,
    treeSeed,
    lengthMm,
    widthMm,
    thicknessMm: spec.thicknessMm ?? 22,
    pithYMm: spec.pithYMm ?? widthMm / 2 + place.asideMm,
    pithDepthMm: spec.pithDepthMm ?? place.depthMm,
    slopeInFaceRad: radFromDeg(spec.slopeInFaceDeg ?? place.inFaceDeg),
    slopeInDepthRad: radFromDeg(spec.slopeInDepthDeg ?? place.inDepthDeg),
    aroundStemRad: radFromDeg(spec.aroundStemDeg ?? own.uniform(0, 360)),
    stationMm: spec.stationMm ?? own.uniform(-600, 600),
    ringWidthMm: spec.ringWidthMm ?? ringWidthMm,
    ringWidthLogSd: spec.ringWidthLogSd ?? 0.33,
    taper: (spec.taperMmPerM ?? taperMmPerM) / 1000,
    spiralRad: radFromDeg(spec.spiralDeg ?? spiralDeg),
    waviness: spec.waviness ?? 1,
    contrast: spec.contrast ?? tree.uniform(0.8, 1.2),
    texture: spec.texture ?? 1,
    baseColour: spec.baseColour ?? baseColour,
    knots: (spec.knots ?? []).map((knot) => ({ radiusMm: 6, ...knot })),
  };
}
