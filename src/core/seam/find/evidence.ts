import { binMaxima } from './binMaxima.js';
import type { LineScan } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';
import { tailScale } from './tailScale.js';

/** How the lines of one board behave, cue by cue and channel by channel. */
export interface BoardScale {
  /** Median of each cue over the region's lines, and half of its 16..84 % range. */
  readonly cues: readonly { readonly middle: number; readonly spread: number }[];
  /** Median and tail of each channel's squared strength over stretches of rows. */
  readonly channels: readonly { readonly median: number; readonly tail: number }[];
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
  const tails = channels.map((channel) => {
    const strength = channelStrength(maps, scan, cues, channel);
    return tailScale(binMaxima(strength, scan.rows, binRows, edgeRows).map((m) => m.value));
  });
  return { cues, channels: tails };
}

/**
 * Evidence of a break in constancy per line, in units of the board's own lines.
 *
 * Per channel, T2 = sum over unsigned cues of max(0, z)^2 + sum over signed cues of z^2 and its
 * surprise s = max(0, T2 - median) / tail, which falls off as exp(-s) among the board's own lines;
 * the evidence is the sum of the surprises. A board full of dark lines thus forgives dark lines.
 */
export function evidence(maps: SeamMaps, scan: LineScan, scale: BoardScale): Float32Array {
  const out = new Float32Array(scan.sum[0].length);
  channels.forEach((channel, k) => {
    const strength = channelStrength(maps, scan, scale.cues, channel);
    const { median, tail } = scale.channels[k];
    for (let i = 0; i < out.length; i++) {
      const surprise = (strength[i] - median) / tail;
      if (surprise > 0 || Number.isNaN(surprise)) out[i] += surprise;
    }
  });
  return out;
}

function channelStrength(
  maps: SeamMaps,
  scan: LineScan,
  cues: BoardScale['cues'],
  channel: readonly string[],
): Float32Array {
  const out = new Float32Array(scan.sum[0].length);
  maps.cues.forEach((cue, k) => {
    if (!channel.includes(cue.cue)) return;
    const { middle, spread } = cues[k];
    const values = scan.sum[k];
    for (let i = 0; i < out.length; i++) {
      const z = (values[i] - middle) / spread;
      if (cue.signed || z > 0 || Number.isNaN(z)) out[i] += z * z;
    }
  });
  return out;
}
