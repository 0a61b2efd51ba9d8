import { SeamgrainError } from '../../errors.js';
import type { AsCutResult, MeasuredPiece } from '../../results/asCutResult.js';
import type { LayoutPiece, LayoutResult } from '../../results/layoutResult.js';
import { tidyNumbers } from '../../units/tidyNumbers.js';
import { asCutAdvice } from './asCutAdvice.js';
import { asCutOpenings } from './asCutOpenings.js';

/** What the tape says of a piece after ripping and dressing; a strip speaks for its pieces. */
export interface PieceMeasure {
  /** `upper rail`, `strip`, `front`, … */
  readonly piece: string;
  /** One width, or at the left and the right end, mm. */
  readonly widthMm?: number | readonly [number, number];
  readonly lengthMm?: number;
}

/**
 * From what the pieces really measure to what still comes out: openings, fronts, face, and advice.
 * Pieces that were not measured are taken as set on the rule.
 * @param layout the plan
 * @param measures measured pieces
 * @throws SeamgrainError `wrongUsage` for a piece that the layout does not have, or a size of 0
 */
export function computeAsCut(layout: LayoutResult, measures: readonly PieceMeasure[]): AsCutResult {
  checkMeasures(layout, measures);
  const pieces = layout.pieces.map((piece) => measured(piece, measures));
  const courses = courseWidths(layout, pieces);
  const widthMm = courses.reduce((sum, course) => sum + course.widthMm, 0);
  const rips = layout.cuts.filter(({ kind }) => kind === 'rip').length;
  const openings = asCutOpenings(layout, pieces);
  const slideMm = layout.panel.lengthMm - layout.gluedFace.lengthMm;
  const lengths = layout.pieces
    .filter(({ kind }) => kind === 'rail')
    .map(({ name }) => pieces.find((piece) => piece.name === name)!.lengthMm);
  const gluedFace = { widthMm, lengthMm: Math.min(...lengths) - slideMm };
  const spareAcrossMm = layout.face ? widthMm - layout.face.widthMm : null;
  return tidyNumbers<AsCutResult>({
    schema: 'seamgrain/asCut@1',
    pieces,
    lostAcrossMm: courses.every(({ isMeasured }) => isMeasured)
      ? layout.panel.widthMm - widthMm
      : null,
    plannedLossMm: rips * (layout.kerfMm + 2 * layout.dressMm),
    openings,
    gluedFace,
    spareAcrossMm,
    advice: asCutAdvice(layout, pieces, openings, spareAcrossMm),
    notes: [
      'A piece that was not measured is taken as set on the rule.',
      'The opening is as high as the end pieces beside it; front and end pieces come from one strip.',
    ],
  });
}

function measured(piece: LayoutPiece, measures: readonly PieceMeasure[]): MeasuredPiece {
  const own = measures.find((measure) => measure.piece === piece.name);
  const strip = measures.find((measure) => measure.piece === piece.strip);
  const width = own?.widthMm ?? strip?.widthMm;
  const [left, right] = typeof width === 'number' ? [width, width] : (width ?? [null, null]);
  return {
    name: piece.name,
    plannedWidthMm: piece.dressedWidthMm,
    widthMm: left === null || right === null ? piece.asSet.widthMm : (left + right) / 2,
    taperMm: left === null || right === null ? 0 : left - right,
    plannedLengthMm: piece.lengthMm,
    lengthMm: own?.lengthMm ?? piece.asSet.lengthMm,
    isMeasured: width !== undefined,
  };
}

/** One width for each rail and each strip; a strip is as wide as its narrowest glued piece. */
function courseWidths(layout: LayoutResult, pieces: readonly MeasuredPiece[]) {
  const names = [...new Set(layout.pieces.map(({ strip, name }) => strip ?? name))];
  return names.map((course) => {
    const members = layout.pieces
      .filter(({ name, strip, kind }) =>
        strip === course ? kind === 'end' || kind === 'divider' : name === course,
      )
      .map(({ name }) => pieces.find((piece) => piece.name === name)!);
    return {
      widthMm: Math.min(...members.map((member) => member.widthMm)),
      isMeasured: members.every((member) => member.isMeasured),
    };
  });
}

function checkMeasures(layout: LayoutResult, measures: readonly PieceMeasure[]): void {
  const known = new Set(
    layout.pieces.flatMap(({ name, strip }) => (strip ? [name, strip] : [name])),
  );
  for (const { piece, widthMm, lengthMm } of measures) {
    if (!known.has(piece)) {
      throw new SeamgrainError(
        'wrongUsage',
        `the layout has no '${piece}'`,
        `measure one of: ${[...known].join(', ')}`,
      );
    }
    const sizes = [widthMm ?? [], lengthMm ?? []].flat();
    if (sizes.some((mm) => !(mm > 0))) {
      throw new SeamgrainError('wrongUsage', `the ${piece} has no size`, 'give what the tape says');
    }
  }
}
