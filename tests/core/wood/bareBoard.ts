import type { BoardSpec } from '../../../src/core/wood/boardSpec.js';

/** A board of exact cones, rings of one width, no texture: trade.md 5.1 holds to the letter. */
export function bareBoard(more: Partial<BoardSpec> = {}): BoardSpec {
  return {
    seed: 5,
    setting: 'softwood',
    waviness: 0,
    texture: 0,
    ringWidthMm: 2,
    ringWidthLogSd: 0,
    taperMmPerM: 8,
    slopeInFaceDeg: 0,
    slopeInDepthDeg: 0,
    aroundStemDeg: 30,
    stationMm: 0,
    pithYMm: 100,
    pithDepthMm: 50,
    ...more,
  };
}
