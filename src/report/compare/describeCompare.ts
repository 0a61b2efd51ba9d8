import type {
  ComparedCandidate,
  ComparedFront,
  CompareResult,
} from '../../core/results/compareResult.js';
import { formatMm } from '../../core/units/formatMm.js';
import { segmentName } from '../forecast/segmentName.js';
import { clauseOfV } from '../forecast/wordOfV.js';
import { scaleText } from '../ramp/scaleText.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { cutText } from './cutText.js';
import { headlineOfCompare } from './headlineOfCompare.js';
import { reasonText } from './reasonText.js';
import { sawnByFace } from './sawnText.js';

/** The candidates from best to worst, each in a few sentences. */
export function describeCompare(result: CompareResult, units: LengthUnits): string[] {
  const [first] = result.candidates;
  const ofAll = (first?.notes ?? []).filter((note) =>
    result.candidates.every(({ notes }) => notes.includes(note)),
  );
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
      ...candidate.notes.filter((note) => !ofAll.includes(note)).map((note) => `   ${note}`),
    ]),
    '',
    ...ofAll,
    scaleText,
  ];
}

/** What a front and the rips of a candidate would show. */
export function lookTexts(
  { front, vMedian, vBest, bestYMm }: ComparedCandidate,
  units: LengthUnits,
): string[] {
  const place = front ? [frontText(front, units)] : [];
  if (vMedian === null || vBest === null || bestYMm === null) {
    return [...place, 'What a rip would show cannot be told.'];
  }
  return [
    ...place,
    `A typical rip ${clauseOfV(vMedian)} (V ${vMedian.toFixed(1)}); the best, ${placeText(bestYMm, units)} from the top, ${clauseOfV(vBest)} (V ${vBest.toFixed(1)}).`,
  ];
}

/** Where a front is best taken from and what shows most there. */
export function frontText(front: ComparedFront, units: LengthUnits): string {
  const { xMm, yMm, worst } = front;
  const look =
    (worst.v ?? 0) < 0.5
      ? 'every joint disappears'
      : `the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}`;
  return `A front ${placeText(xMm, units)} from the left and ${placeText(yMm, units)} from the top: ${look}.`;
}

/** How it is sawn and what the season does to it; empty where neither is known. */
export function stockText(candidate: ComparedCandidate, units: LengthUnits): string {
  const { cut, cutFromFace, gapMm } = candidate;
  const byFace = cutFromFace ? sawnByFace(cutFromFace) : '';
  const sawn = cut ? `Sawn ${cutText(cut)}.` : byFace;
  const gap = gapMm === null ? '' : `The season wants a gap of ${gapText(gapMm, units)}.`;
  return [sawn, gap].filter(Boolean).join(' ');
}

/** A gap: a tenth of a millimetre, or a small fraction of an inch. */
export const gapText = (gapMm: number, units: LengthUnits): string =>
  units.units === 'mm' ? formatMm(gapMm, 1) : smallLengthText(gapMm, units);
