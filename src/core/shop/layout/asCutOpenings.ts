import type { AsCutResult, MeasuredPiece } from '../../results/asCutResult.js';
import type { LayoutResult } from '../../results/layoutResult.js';

/** The openings that the measured pieces make, and what their fronts can still be. */
export function asCutOpenings(
  layout: LayoutResult,
  pieces: readonly MeasuredPiece[],
): AsCutResult['openings'] {
  const fronts = layout.pieces.filter(({ kind }) => kind === 'front' || kind === 'cut-out');
  return layout.openings.map((opening, index) => {
    const planned = fronts[index]!;
    const front = pieces.find(({ name }) => name === planned.name)!;
    const beside = layout.pieces
      .filter(
        ({ strip, kind }) => strip === planned.strip && (kind === 'end' || kind === 'divider'),
      )
      .map(({ name }) => pieces.find((piece) => piece.name === name)!);
    const widthMm = Math.min(...beside.map((piece) => piece.widthMm));
    const longerMm = beside.reduce((sum, piece) => sum + piece.lengthMm - piece.plannedLengthMm, 0);
    const inStrip = fronts.filter(({ strip }) => strip === planned.strip).length;
    // What the end pieces lost, the openings of the strip gained.
    const lengthMm = opening.lengthMm - longerMm / inStrip;
    const sameWood = layout.frontWood === 'same';
    const trimEndsMm = (planned.lengthMm - opening.frontLengthMm) / 2;
    const frontWidthMm = Math.min(widthMm, sameWood ? front.widthMm : widthMm) - 2 * layout.trimMm;
    const frontLengthMm = sameWood ? front.lengthMm - 2 * trimEndsMm : opening.frontLengthMm;
    return {
      front: opening.front,
      widthMm,
      lengthMm,
      frontWidthMm,
      frontLengthMm,
      shortAcrossMm: widthMm - 2 * layout.trimMm - frontWidthMm,
      shortAlongMm: Math.max(0, opening.frontLengthMm - frontLengthMm),
      trimForAskedMm: (frontWidthMm + 2 * layout.trimMm - opening.frontWidthMm) / 2,
    };
  });
}
