import { degFromRad } from '../src/core/units/degFromRad.js';
import type { PanelTruth } from '../src/core/wood/panelTruth.js';

const round = (value: number, digits = 3) => Number(value.toFixed(digits));

/** A panel's truth as plain JSON: seams, and grain on a 20 mm grid (row by row). */
export function truthOfPanel(truth: PanelTruth, cellMm = 20) {
  const columns = Math.floor(truth.widthMm / cellMm);
  const rows = Math.floor(truth.heightMm / cellMm);
  const cells = Array.from({ length: rows * columns }, (_, k) => {
    const xMm = (k % columns) * cellMm + cellMm / 2;
    const yMm = Math.floor(k / columns) * cellMm + cellMm / 2;
    return {
      xMm,
      yMm,
      angleDeg: round(degFromRad(truth.grainAngleRad(xMm, yMm)), 2),
      spacingMm: round(truth.ringSpacingMm(xMm, yMm), 2),
      fibreDeg: round(degFromRad(truth.fibreAngleRad(xMm, yMm)), 2),
    };
  });
  return {
    widthMm: round(truth.widthMm),
    heightMm: round(truth.heightMm),
    seams: truth.seams.map((seam) => ({
      id: seam.id,
      kind: seam.kind,
      line: Object.fromEntries(Object.entries(seam.line).map(([key, mm]) => [key, round(mm)])),
      sameBoard: seam.sameBoard,
      lostMm: seam.lostMm,
      slideMm: seam.slideMm,
      gapMm: seam.gapMm,
      glueLine: { widthMm: seam.glueWidthMm, contrast: seam.glueContrast },
      colourStep: {
        dL: round(seam.colourStep.dL, 2),
        da: round(seam.colourStep.da, 2),
        db: round(seam.colourStep.db, 2),
      },
    })),
    grain: cells,
  };
}
