import type { ComparedCandidate, CompareResult } from '../../core/results/compareResult.js';
import { formatMm } from '../../core/units/formatMm.js';
import { segmentName } from '../forecast/segmentName.js';
import { clauseOfV } from '../forecast/wordOfV.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { headlineOfCompare } from './headlineOfCompare.js';
import { reasonText } from './reasonText.js';

/** The candidates from best to worst, each in a few sentences. */
export function describeCompare(result: CompareResult, units: LengthUnits): string[] {
  return [
    headlineOfCompare(result),
    '',
    ...result.candidates.flatMap((candidate) => [
      `${candidate.rank}. ${candidate.photo}: ${[
        ...lookTexts(candidate, units),
        reasonText(result, candidate),
        stockText(candidate, units),
      ]
        .filter(Boolean)
        .join(' ')}`,
      ...candidate.notes.map((note) => `   ${note}`),
    ]),
  ];
}

/** What a front and the rips of a candidate would show. */
export function lookTexts(
  { front, vMedian, vBest, bestYMm }: ComparedCandidate,
  units: LengthUnits,
): string[] {
  const place = front
    ? [
        `A front ${placeText(front.xMm, units)} from the left and ${placeText(front.yMm, units)} from the top: ${
          (front.worst.v ?? 0) < 0.5
            ? 'every joint disappears'
            : `the worst, the ${segmentName(front.worst)}, ${clauseOfV(front.worst.v)}`
        }.`,
      ]
    : [];
  if (vMedian === null || vBest === null || bestYMm === null) {
    return [...place, 'What a rip would show cannot be told.'];
  }
  return [
    ...place,
    `A middling rip ${clauseOfV(vMedian)} (V ${vMedian.toFixed(1)}); the best, ${placeText(bestYMm, units)} from the top, ${clauseOfV(vBest)} (V ${vBest.toFixed(1)}).`,
  ];
}

/** How it is sawn and what the season does to it; empty where neither is known. */
export function stockText({ cut, gapMm }: ComparedCandidate, units: LengthUnits): string {
  const sawn = cut ? `Sawn ${cutText(cut)}.` : '';
  const small =
    gapMm === null ? '' : units.units === 'mm' ? formatMm(gapMm, 1) : smallLengthText(gapMm, units);
  return [sawn, small && `The season wants a gap of ${small}.`].filter(Boolean).join(' ');
}

/** `70 % flatsawn, 30 % rift`. */
export function cutText(cut: NonNullable<ComparedCandidate['cut']>): string {
  return (['flatsawn', 'rift', 'quartered'] as const)
    .filter((name) => cut[name] >= 0.005)
    .map((name) => `${Math.round(100 * cut[name])} % ${name}`)
    .join(', ');
}
