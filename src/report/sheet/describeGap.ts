import type { GapResult } from '../../core/results/gapResult.js';
import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';

/** A gap as lines for a terminal. */
export function describeGap(gap: GapResult): string[] {
  const both = (mm: number) => `${formatInches(mm, 64)} (${formatMm(mm, 2)})`;
  const { seasons, place, ends, months } = gap;
  const verb = gap.changeMm < 0 ? 'shrinks' : 'swells';
  const lines = [
    `${gap.species}: from ${gap.mcFrom.toFixed(1)} to ${gap.mcTo.toFixed(1)} % the front ${verb} by ${both(Math.abs(gap.changeMm))}, give or take ${both(gap.changeSeMm)}.`,
    `Gap: ${both(gap.gapMm)}; ${both(gap.gapAmpleMm)} to be sure.`,
    `Leave ${both(seasons.fittedMm)} at fitting: ${both(place.topMm)} above, ${both(place.bottomMm)} below. ${place.why}`,
    `It is ${both(seasons.driestMm)} when driest and ${both(seasons.dampestMm)} when dampest. ${gap.looks.words}`,
  ];
  if (ends) {
    lines.push(`Along the grain the front changes by at most ${both(Math.abs(ends.changeMm))}.`);
  }
  for (const { month, mc, gapMm } of months ?? []) {
    lines.push(`  month ${month}: ${mc.toFixed(1)} %, gap ${both(gapMm)}`);
  }
  return [...lines, gap.equation, gap.source, ...gap.notes];
}
