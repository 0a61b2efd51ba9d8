import type { GapResult } from '../../core/results/gapResult.js';
import { lengthWords } from '../../core/units/lengthWords.js';
import { capitalise } from '../words/capitalise.js';

/** A gap as lines for a terminal. */
export function describeGap(gap: GapResult): string[] {
  const both = lengthWords;
  const { seasons, place, ends, months } = gap;
  const verb = gap.changeMm < 0 ? 'shrinks' : 'swells';
  const lines = [
    `${capitalise(gap.species)}: from ${gap.mcFrom.toFixed(1)} to ${gap.mcTo.toFixed(1)} % the front ${verb} by ${both(Math.abs(gap.changeMm))}, give or take ${both(gap.changeSeMm)}.`,
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
  return [...lines, gap.equation, `${gap.source}${legendOf(gap.source)}`, ...gap.notes];
}

const marks = [
  ['[L]', 'read in the source'],
  ['[L2]', 'read second-hand'],
  ['[M]', 'from memory'],
  ['[C]', 'worked out from the rest'],
] as const;

/** What the marks behind a species' figures say: S its shrinkage, C its change for 1 % moisture. */
function legendOf(source: string): string {
  const used = marks.filter(([mark]) => source.includes(mark));
  if (used.length === 0) return '';
  const words = used.map(([mark, meaning]) => `${mark} ${meaning}`).join(', ');
  return `. S is its shrinkage, C its change for 1 % of moisture; ${words}.`;
}
