import { binMaxima } from './binMaxima.js';
import type { LineScan } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';
import { tailScale } from './tailScale.js';
import { whiten } from './whiten.js';

/** How the lines of one board behave, cue by cue and channel by channel. */
export interface BoardScale {
  /** Median of each cue over the region's lines, and half of its 16..84 % range. */
  readonly cues: readonly { readonly middle: number; readonly spread: number }[];
  /** Per channel the inverse correlation of its cues, and median and tail of its strength. */
  readonly channels: readonly ChannelScale[];
}

interface ChannelScale {
  readonly inverse: readonly (readonly number[])[];
  readonly median: number;
  readonly tail: number;
}

/** Cues that speak of the same thing are judged together: a break, a thin line, a colour step. */
export const channels: readonly (readonly string[])[] = [
  ['breakFine'],
  ['breakCoarse'],
  ['breakCarried'],
  ['ridge'],
  ['lightness', 'a', 'b'],
];

/** Learns the board's own scale from the lines of its own scan. */
export function boardScale(
  maps: SeamMaps,
  scan: LineScan,
  binRows: number,
  edgeRows: number,
): BoardScale {
  const cues = scan.sum.map((values) => {
    const sorted = values.filter((v) => !Number.isNaN(v)).sort();
    const at = (q: number) => sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))];
    return { middle: at(0.5), spread: (at(0.84) - at(0.16)) / 2 + 1e-9 };
  });
  const scales = channels.map((channel) => {
    const z = standardised(maps, scan, cues, channel);
    const inverse = z.length > 1 ? whiten(z) : [[1]];
    const maxima = binMaxima(strength(z, inverse), scan.rows, binRows, edgeRows);
    return { inverse, ...tailScale(maxima.map((m) => m.value)) };
  });
  return { cues, channels: scales };
}

/**
 * Evidence of a break in constancy per line, in units of the board's own lines.
 *
 * With z a channel's cues over the board's own spread (an unsigned cue counts from 0 up), its
 * strength is T2 = z' C^-1 z, C the cues' correlation on this board, and its surprise
 * s = max(0, T2 - median) / tail, which falls off as exp(-s) among the board's own lines; the
 * evidence is the sum of the surprises. A board full of dark lines thus forgives dark lines.
 */
export function evidence(maps: SeamMaps, scan: LineScan, scale: BoardScale): Float32Array {
  const out = new Float32Array(scan.sum[0].length);
  channels.forEach((channel, k) => {
    const { inverse, median, tail } = scale.channels[k];
    const t2 = strength(standardised(maps, scan, scale.cues, channel), inverse);
    for (let i = 0; i < out.length; i++) {
      const surprise = (t2[i] - median) / tail;
      if (surprise > 0 || Number.isNaN(surprise)) out[i] += surprise;
    }
  });
  return out;
}

function standardised(
  maps: SeamMaps,
  scan: LineScan,
  cues: BoardScale['cues'],
  channel: readonly string[],
): Float32Array[] {
  return channel.map((name) => {
    const k = maps.cues.findIndex((cue) => cue.cue === name);
    const { middle, spread } = cues[k];
    const signed = maps.cues[k].signed;
    return scan.sum[k].map((value) => {
      const z = (value - middle) / spread;
      return signed || !(z < 0) ? z : 0;
    });
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
