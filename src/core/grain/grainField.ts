import { averageDown } from '../filter/averageDown.js';
import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { Plane } from '../image/plane.js';
import { type BlockTensor, blockTensor } from './blockTensor.js';
import { carryAlongGrain } from './carryAlongGrain.js';
import { grainAngleSe } from './grainAngleSe.js';
import type { BlockDirections } from './grainWay.js';

/** Ring-line direction over the panel, one entry per block of about a millimetre. */
export interface GrainField {
  readonly width: number;
  readonly height: number;
  readonly stepMm: number;
  readonly angleRad: Float32Array;
  readonly angleSeRad: Float32Array;
  readonly coherence: Float32Array;
  /** Log luminance carried along the grain: the ring lines without pores and streaks. */
  readonly lines: Plane;
  readonly linesPxPerMm: number;
}

/** Finest scale that ring lines need, px/mm. */
const workPxPerMm = 4;
/** First look: slope and window scales, mm. */
const firstSlopeMm = 0.5;
/** Second and third look, on lines carried along the grain. */
const slopeMm = 0.35;
const windowMm = 3;
const carryMm = 8;
const looks = 2;

/**
 * Direction of the ring lines everywhere on the panel, knowing what it knows.
 *
 * A structure tensor gives a first direction; the picture is then averaged 8 mm along it, which
 * leaves the ring lines and drops pores and fibre, and the tensor is taken again, twice. On drawn
 * faces this halves the median error of the plain tensor (docs/accuracy.md). The standard error
 * is `grainAngleSe`'s.
 *
 * @param logLuminance plane of the panel. @param pxPerMm its scale.
 */
export function grainField(logLuminance: Plane, pxPerMm: number): GrainField {
  const factor = Math.max(1, Math.round(pxPerMm / workPxPerMm));
  const source = factor > 1 ? averageDown(logLuminance, factor) : logLuminance;
  const scale = pxPerMm / factor;
  let lines = source;
  let blocks = blocksOf(source, scale, firstSlopeMm);
  const uncarried = smoothed(blocks, windowMm);
  let smooth = uncarried;
  for (let look = 0; look < looks; look++) {
    lines = carryAlongGrain(source, directions(smooth, scale), carryMm * scale);
    blocks = blocksOf(lines, scale, slopeMm);
    smooth = smoothed(blocks, windowMm);
  }
  return {
    width: blocks.width,
    height: blocks.height,
    stepMm: blocks.stepMm,
    angleRad: anglesOf(smooth),
    angleSeRad: grainAngleSe(blocks, smooth, uncarried, windowMm),
    coherence: coherences(smooth),
    lines,
    linesPxPerMm: scale,
  };
}

function blocksOf(plane: Plane, scale: number, sigmaMm: number): BlockTensor {
  const slopePx = Math.max(0.7, sigmaMm * scale);
  return blockTensor(plane, slopePx, Math.max(1, Math.round(scale)), scale);
}

function smoothed(blocks: BlockTensor, sigmaMm: number): BlockTensor {
  const { width, height, stepMm } = blocks;
  const blur = (data: Float32Array) => gaussianBlur({ width, height, data }, sigmaMm / stepMm).data;
  return { ...blocks, jxx: blur(blocks.jxx), jxy: blur(blocks.jxy), jyy: blur(blocks.jyy) };
}

function anglesOf(t: BlockTensor): Float32Array {
  return t.jxx.map((xx, i) => {
    const across = 0.5 * Math.atan2(2 * t.jxy[i], xx - t.jyy[i]);
    return across > 0 ? across - Math.PI / 2 : across + Math.PI / 2;
  });
}

function coherences(t: BlockTensor): Float32Array {
  return t.jxx.map((xx, i) => Math.hypot(xx - t.jyy[i], 2 * t.jxy[i]) / (xx + t.jyy[i] + 1e-12));
}

function directions(t: BlockTensor, scale: number): BlockDirections {
  const angle = anglesOf(t);
  return {
    width: t.width,
    height: t.height,
    blockPx: Math.max(1, Math.round(scale)),
    cos: angle.map(Math.cos),
    sin: angle.map(Math.sin),
  };
}
