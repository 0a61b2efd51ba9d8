import type { GapResult } from '../../results/gapResult.js';
import { formatInches } from '../../units/formatInches.js';

/**
 * The gap as a line that the eye sees: gap and the chamfers on both of its edges.
 * A chamfer makes the line wider and steadier: the season changes a smaller part of it.
 * @param driestMm gap when driest, mm
 * @param dampestMm gap when dampest, mm
 * @param chamferMm on each of the two edges, mm
 * @param distanceMm viewing distance, mm
 */
export function gapLooks(
  driestMm: number,
  dampestMm: number,
  chamferMm: number,
  distanceMm: number,
): GapResult['looks'] {
  const driestLineMm = driestMm + 2 * chamferMm;
  const dampestLineMm = dampestMm + 2 * chamferMm;
  const arcMinutes = (mm: number) => (Math.atan(mm / distanceMm) * 180 * 60) / Math.PI;
  const narrow = Math.min(driestLineMm, dampestLineMm);
  const wide = Math.max(driestLineMm, dampestLineMm);
  const range =
    formatInches(narrow, 64) === formatInches(wide, 64)
      ? `of ${formatInches(wide, 64)}`
      : `from ${formatInches(narrow, 64)} to ${formatInches(wide, 64)} over the year`;
  // One arc minute is about the finest line that a normal eye resolves.
  const advice =
    arcMinutes(wide) < 1
      ? 'At this distance it is finer than the eye resolves.'
      : wide > 2 * narrow
        ? 'It more than doubles: a small chamfer on both edges, or a reveal, hides the change.'
        : 'It looks much the same all year.';
  return {
    driestLineMm,
    dampestLineMm,
    driestArcMinutes: arcMinutes(driestLineMm),
    dampestArcMinutes: arcMinutes(dampestLineMm),
    advice,
    words: `A dark line ${range}. ${advice}`,
  };
}
