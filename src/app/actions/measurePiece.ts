import { changeProject } from '../state/workbench.js';

/** Notes what the tape says of a piece; null forgets it. */
export function measurePiece(
  piece: string,
  change: { readonly widthMm?: number | null; readonly lengthMm?: number | null },
): void {
  changeProject(`Measure the ${piece}`, ({ measures }) => {
    const known = measures.find((measure) => measure.piece === piece);
    if (known) Object.assign(known, change);
    else measures.push({ piece, widthMm: null, lengthMm: null, ...change });
  });
}

/** Forgets every measured piece. */
export function forgetMeasures(): void {
  changeProject('Forget what was measured', (draft) => {
    draft.measures = [];
  });
}
