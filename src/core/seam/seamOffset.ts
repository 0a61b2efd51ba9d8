import type { SeamResult } from '../results/scoreResult.js';
import { wrapToSpacing } from '../visibility/wrapToSpacing.js';
import type { LineMeasures } from './lineMeasures.js';
import { type WindowOffset, windowOffset } from './windowOffset.js';

/** Windows whose two sides share less than this do not vote. */
const leastAgreement = 0.6;
/** MAD to standard deviation of a normal distribution. */
const madToSd = 1.4826;

/**
 * Offset of the grain lines over the whole seam: the one offset that its windows, each within its
 * own spacing, are least away from (least sum of absolute differences). Its error
 * from the scatter of the same reading along lines of the same boards with no seam (whose offset
 * is 0), and the windows' median line spacing.
 */
export function seamOffset(seam: LineMeasures, own: readonly LineMeasures[]): SeamResult['offset'] {
  const votes = offsetsOf(seam);
  if (votes.length === 0) return { mm: null, seMm: null, spacingMm: null };
  const spacingMm = median(votes.map((v) => v.spacingMm));
  const mm = commonOffset(votes, spacingMm);
  const usual = own.flatMap(offsetsOf).map((v) => Math.abs(v.offsetMm));
  const here = votes.map((v) => Math.abs(wrapToSpacing(v.offsetMm - mm, v.spacingMm)));
  const scatter = madToSd * Math.max(median(here), usual.length > 0 ? median(usual) : 0);
  return { mm, seMm: scatter / Math.sqrt(independent(seam, votes.length)), spacingMm };
}

function offsetsOf(line: LineMeasures): WindowOffset[] {
  return line.windows
    .map(windowOffset)
    .filter((o): o is WindowOffset => o !== null && o.agreement >= leastAgreement);
}

const triesPerSpacing = 96;

function commonOffset(votes: readonly WindowOffset[], spacingMm: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let k = -triesPerSpacing / 2; k <= triesPerSpacing / 2; k++) {
    const mm = (k * spacingMm) / triesPerSpacing;
    const away = votes.reduce(
      (sum, v) => sum + Math.abs(wrapToSpacing(v.offsetMm - mm, v.spacingMm)),
      0,
    );
    if (away < least) [best, least] = [mm, away];
  }
  // The tries only choose the turn of the wrap; the middle vote about it is the answer.
  const rest = median(votes.map((v) => wrapToSpacing(v.offsetMm - best, v.spacingMm)));
  return wrapToSpacing(best + rest, spacingMm);
}

/** Windows whose wood overlaps are no separate witnesses: one per two line spacings crossed. */
function independent(seam: LineMeasures, votes: number): number {
  const crossed = seam.u.at(-1) ?? 0;
  return Math.max(1, Math.min(votes, crossed / 4));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length % 2 === 1
    ? sorted[sorted.length >> 1]
    : (sorted[sorted.length / 2 - 1] + sorted[sorted.length / 2]) / 2;
}
