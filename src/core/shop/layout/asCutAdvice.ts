import type { AsCutResult, MeasuredPiece } from '../../results/asCutResult.js';
import type { LayoutResult } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';

/** Thinnest thing that a joint must not pass: a slip of paper, 0.1 mm [M]. */
const paperMm = 0.1;

/** What to do about the measured pieces, most pressing first. */
export function asCutAdvice(
  layout: LayoutResult,
  pieces: readonly MeasuredPiece[],
  openings: AsCutResult['openings'],
  spareAcrossMm: number | null,
): string[] {
  const advice = [
    ...openings.flatMap((opening) => openingAdvice(layout, opening)),
    ...taperAdvice(layout, pieces),
  ];
  if (spareAcrossMm !== null && spareAcrossMm < 0) {
    advice.push(
      `The glued face comes out ${lengthWords(-spareAcrossMm)} narrower than asked for: accept that, or add a strip at an outer edge, away from the fronts.`,
    );
  }
  return advice.length > 0 ? advice : ['All as planned: go on.'];
}

function openingAdvice(layout: LayoutResult, opening: AsCutResult['openings'][number]): string[] {
  const { front, trimForAskedMm, shortAcrossMm, shortAlongMm } = opening;
  const advice: string[] = [];
  if (layout.trimMm - trimForAskedMm > paperMm / 2) {
    advice.push(
      trimForAskedMm >= 0
        ? `The ${front} strip is narrow: the size asked for is still possible with ${lengthWords(trimForAskedMm)} of trim an edge instead of ${lengthWords(layout.trimMm)}. Ask the gap whether that is enough, or let the front be ${lengthWords(opening.frontWidthMm)} wide.`
        : `The ${front} cannot be the width asked for any more: ${lengthWords(opening.frontWidthMm)} with the trim, ${lengthWords(opening.frontWidthMm + 2 * layout.trimMm)} without. The opening follows it, so the fit can still be close.`,
    );
  }
  if (shortAcrossMm > paperMm) {
    advice.push(
      `The ${front} is narrower than the pieces beside it by ${lengthWords(shortAcrossMm)}: dress the end pieces, not the front, down to its width before glue-up, and both rails close in on it.`,
    );
  }
  if (shortAlongMm > paperMm) {
    advice.push(
      `The ${front} is ${lengthWords(shortAlongMm)} short along the grain: slide the end pieces in by half of that each, if they have not been trimmed.`,
    );
  }
  return advice;
}

function taperAdvice(layout: LayoutResult, pieces: readonly MeasuredPiece[]): string[] {
  const tapered = new Map<string, number>();
  for (const { name, taperMm } of pieces) {
    if (Math.abs(taperMm) <= paperMm) continue;
    const strip = layout.pieces.find((piece) => piece.name === name)!.strip;
    tapered.set(strip ?? name, taperMm);
  }
  return [...tapered].map(([name, taperMm]) => {
    const wide = taperMm > 0 ? 'left' : 'right';
    return `The ${name} tapers by ${lengthWords(Math.abs(taperMm))}, wider at the ${wide} end. A tapered rail does no harm to the joint; a tapered strip makes a tapered opening: take it off the wide end before the crosscuts.`;
  });
}
