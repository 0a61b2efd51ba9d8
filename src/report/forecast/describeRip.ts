import type { ForecastRip } from '../../core/results/forecastResult.js';
import { cueText } from '../words/cueText.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { seenFromText } from '../words/seenFromText.js';
import { slideText } from './slideText.js';
import { clauseOfV, wordOfV } from './wordOfV.js';

/** One rip in a sentence or two: `A rip 2 3/4 in from the top disappears.` */
export function describeRip(rip: ForecastRip, units: LengthUnits): string {
  const { v, vanishesAtMm } = rip.visibility;
  const where = `A rip ${placeText(rip.yMm, units)} from the top`;
  if (v === null) return `${where} cannot be forecast${because(rip.notes)}.`;
  const worst = v >= 1 ? worstText(rip, units) : '';
  const far = v >= 1 && vanishesAtMm ? ` ${seenFromText(vanishesAtMm, units)}` : '';
  return [
    `${where} ${clauseOfV(v)}${far}${worst}.`,
    ...slideSentence(rip, units),
    ...rip.notes,
  ].join(' ');
}

/** What sliding the upper piece would gain; nothing when it would gain nothing. */
function slideSentence({ bestSlideMm, vAtBestSlide, visibility }: ForecastRip, units: LengthUnits) {
  if (!bestSlideMm) {
    return (visibility.v ?? 0) >= 1 ? ['No slide within the spare length makes it better.'] : [];
  }
  const after = wordOfV(vAtBestSlide);
  const same = after === wordOfV(visibility.v) ? 'a little less, though it still' : 'less: then it';
  return [
    `Slide the upper piece ${slideText(bestSlideMm, units)} and it shows ${same} ${clauseOfV(vAtBestSlide)}.`,
  ];
}

function worstText(rip: ForecastRip, units: LengthUnits): string {
  const told = rip.windows.filter(({ v }) => v !== null);
  const worst = told.reduce<(typeof told)[number] | null>(
    (a, b) => ((b.v ?? 0) > (a?.v ?? 0) ? b : a),
    null,
  );
  if (!worst) return '';
  const facts = { ...worst, cue: worst.cue ?? rip.visibility.cue };
  const seen =
    facts.cue === 'glueLine' ? 'half a ring line is left along the joint' : cueText(facts, units);
  return `, worst ${placeText(worst.atMm, units)} from the left, where ${seen}`;
}

function because(notes: readonly string[]): string {
  return notes.length > 0 ? `: ${notes[0]?.replace(/\.$/, '')}` : '';
}
