import { nthSmallest } from '../../statistics/nthSmallest.js';
import { binMaxima } from './binMaxima.js';
import { discordSurprise } from './discordSurprise.js';
import type { LineScan } from './lineScan.js';
import { pooledSurprise } from './pooledSurprise.js';
import type { SeamMaps } from './seamMaps.js';
import { tailScale } from './tailScale.js';
import { whiten } from './whiten.js';

/** How the lines of one board behave, one entry per signed channel. */
export type BoardScale = readonly ChannelScale[];

interface ChannelScale {
  /** Per cue the median over the region's lines, and half of its 16..84 % range. */
  readonly cues: readonly { readonly middle: number; readonly spread: number }[];
  /** Inverse correlation of the cues, and median and tail of their joint strength. */
  readonly inverse: readonly (readonly number[])[];
  readonly median: number;
  readonly tail: number;
}

/** Signed cues that speak of the same thing are judged together: a thin line, a colour step. */
const signedChannels: readonly (readonly string[])[] = [['ridge'], ['lightness', 'a', 'b']];

/**
 * No board is taken to be steadier than this (roots of a step, as the maps have it). In a* and b*: JPEG
 * keeps colour in steps of 0.2 to 0.6 of b*, and under a lamp to one side such a step runs straight
 * across a whole panel of faint figure. In ridges: less than a hundredth of a level of a photo's grey.
 */
const leastSpread: { readonly [cue: string]: number } = { ridge: 0.005, a: 0.07, b: 0.07 };

/** Learns the board's own scale from the lines of its own scan. */
export function boardScale(
  maps: SeamMaps,
  scan: LineScan,
  binRows: number,
  edgeRows: number,
): BoardScale {
  return signedChannels.map((channel) => {
    const cues = channel.map((name) =>
      usualOf(scan.sum[cueIndex(maps, name)], leastSpread[name] ?? 1e-9),
    );
    const z = standardised(maps, scan, cues, channel);
    const inverse = z.length > 1 ? whiten(z) : [[1]];
    const maxima = binMaxima(strength(z, inverse), scan.rows, binRows, edgeRows);
    return { cues, inverse, ...tailScale(maxima.map((m) => m.value)) };
  });
}

function usualOf(values: Float32Array, least: number): ChannelScale['cues'][number] {
  const kept = new Float32Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    if (!Number.isNaN(values[i])) kept[count++] = values[i];
  }
  const told = kept.subarray(0, count);
  const at = (q: number) => nthSmallest(told, Math.floor(q * told.length));
  return { middle: at(0.5), spread: Math.hypot(least, (at(0.84) - at(0.16)) / 2) };
}

/**
 * Evidence of a joint per line: its channels' surprises pooled (`pooledSurprise`), falling off as
 * exp(-evidence) among lines with no joint.
 *
 * Discord is a likelihood ratio against the wood beside the line and carries its own scale
 * (`discordSurprise`). For a signed channel, z its cues over the board's own spread and C their
 * correlation on this board, T2 = z' C^-1 z and s = max(0, T2 - median) / tail: a board full of
 * dark lines forgives dark lines.
 */
export function evidence(maps: SeamMaps, scan: LineScan, scale: BoardScale): Float32Array {
  const signed = signedChannels.map((channel, k) => {
    const { cues, inverse, median, tail } = scale[k];
    const t2 = strength(standardised(maps, scan, cues, channel), inverse);
    return t2.map((t) => (t < median ? 0 : (t - median) / tail));
  });
  const here = signed.map(() => 0);
  return discord(maps, scan, (surprise, i) => {
    for (let k = 0; k < here.length; k++) here[k] = signed[k][i];
    return pooledSurprise(surprise, here);
  });
}

/** The share of `evidence` that a line has from its discord alone. */
export function discordAlone(maps: SeamMaps, scan: LineScan): Float32Array {
  const none = signedChannels.map(() => 0);
  return discord(maps, scan, (surprise) => pooledSurprise(surprise, none));
}

function discord(
  maps: SeamMaps,
  scan: LineScan,
  pooled: (surprise: number, i: number) => number,
): Float32Array {
  const stepped = scan.sum[cueIndex(maps, 'stepped')];
  return scan.sum[cueIndex(maps, 'strangers')].map((strangers, i) =>
    pooled(discordSurprise(strangers, stepped[i], scan.slopes.length), i),
  );
}

const cueIndex = (maps: SeamMaps, name: string) => maps.cues.findIndex((cue) => cue.cue === name);

function standardised(
  maps: SeamMaps,
  scan: LineScan,
  cues: ChannelScale['cues'],
  channel: readonly string[],
): Float32Array[] {
  return channel.map((name, k) => {
    const { middle, spread } = cues[k];
    return scan.sum[cueIndex(maps, name)].map((value) => (value - middle) / spread);
  });
}

function strength(
  z: readonly Float32Array[],
  inverse: readonly (readonly number[])[],
): Float32Array {
  const out = new Float32Array(z[0].length);
  for (let i = 0; i < out.length; i++) {
    let sum = 0;
    for (let a = 0; a < z.length; a++) {
      for (let b = 0; b < z.length; b++) sum += inverse[a][b] * z[a][i] * z[b][i];
    }
    out[i] = sum;
  }
  return out;
}
