import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import { SeamgrainError } from '../errors.js';
import { type GrainField, grainField } from '../grain/grainField.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import { sampleBilinear } from '../image/sampleBilinear.js';
import type { Progress } from '../progress.js';
import type { GrainCell, GrainResult } from '../results/grainResult.js';
import { bandAmplitudes } from '../seam/bandAmplitudes.js';
import { spacingMm } from '../seam/spacingMm.js';
import { wrapHalfTurnDeg } from '../units/wrapHalfTurnDeg.js';
import { faceRingsOf } from './faceRingsPanel.js';

/** A direction less sure than this is not told, rad (20 deg). */
const leastSureRad = 0.35;
/** Below this the picture has no direction there. */
const leastCoherence = 0.1;
/** How far across the grain lines are counted, mm to either side. */
const spanMm = 20;
const spanStepMm = 0.25;

/**
 * The grain field of a panel on a grid: ring-line angle with its standard error, coherence and
 * distance between lines.
 *
 * @param photo the panel, square on. @param options.cellMm grid step, 2..100 mm, default 10.
 * @param options.ringAngle also estimate how the rings stand to the face, default false; the photo
 *   then shows one board, its length from left to right.
 * @throws SeamgrainError `badPanel` when the panel holds no cell.
 */
export function grainPanel(
  photo: PanelPhoto,
  options: { readonly cellMm?: number; readonly ringAngle?: boolean } = {},
  progress?: Progress,
): GrainResult {
  const cellMm = options.cellMm ?? 10;
  if (!(cellMm >= 2 && cellMm <= 100)) {
    throw new SeamgrainError(
      'wrongUsage',
      `A grid step of ${cellMm} mm cannot be used.`,
      'Choose 2 mm to 100 mm.',
    );
  }
  const columns = Math.floor(photo.widthMm / cellMm);
  const rows = Math.floor(photo.heightMm / cellMm);
  if (columns < 1 || rows < 1) {
    throw new SeamgrainError(
      'badPanel',
      `The panel of ${photo.widthMm.toFixed(0)} x ${photo.heightMm.toFixed(0)} mm is smaller than one cell of ${cellMm} mm.`,
      'Choose a smaller cell or photograph more of the panel.',
    );
  }
  progress?.(0.05, 'reading the grain');
  const field = grainField(logLuminancePlane(photo.image), photo.pxPerMm);
  progress?.(0.7, 'counting lines');
  const cells: GrainCell[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      cells.push(cellAt(field, (column + 0.5) * cellMm, (row + 0.5) * cellMm));
    }
  }
  progress?.(1, 'done');
  const silent = cells.filter((cell) => cell.angleDeg === null).length;
  return {
    schema: 'seamgrain/grain@1',
    panel: { widthMm: photo.widthMm, heightMm: photo.heightMm, pxPerMm: photo.pxPerMm },
    cells,
    notes: [
      ...photo.notes,
      ...(silent > 0
        ? [`Cannot tell the grain direction in ${silent} of ${cells.length} cells: no lines there.`]
        : []),
    ],
    ...(options.ringAngle && { ringAngleFromFace: faceRingsOf(field, photo.heightMm) }),
  };
}

function cellAt(field: GrainField, xMm: number, yMm: number): GrainCell {
  const column = Math.min(field.width - 1, Math.floor(xMm / field.stepMm));
  const row = Math.min(field.height - 1, Math.floor(yMm / field.stepMm));
  const i = row * field.width + column;
  const coherence = field.coherence[i];
  const told = field.angleSeRad[i] < leastSureRad && coherence > leastCoherence;
  const deg = 180 / Math.PI;
  return {
    xMm,
    yMm,
    angleDeg: told ? wrapHalfTurnDeg(field.angleRad[i] * deg) : null,
    angleSeDeg: told ? field.angleSeRad[i] * deg : null,
    coherence,
    spacingMm: told ? lineSpacing(field, xMm, yMm, field.angleRad[i]) : null,
  };
}

/** Distance between lines from the octaves of a profile across the grain. */
function lineSpacing(field: GrainField, xMm: number, yMm: number, angle: number): number | null {
  const n = Math.round((2 * spanMm) / spanStepMm);
  const u = Float64Array.from({ length: n }, (_, k) => (k + 0.5) * spanStepMm);
  const profile = u.map((t) => {
    const x = (xMm - (t - spanMm) * Math.sin(angle)) * field.linesPxPerMm - 0.5;
    const y = (yMm + (t - spanMm) * Math.cos(angle)) * field.linesPxPerMm - 0.5;
    const inside = x >= 0 && y >= 0 && x < field.lines.width && y < field.lines.height;
    return inside ? sampleBilinear(field.lines, x, y) : Number.NaN;
  });
  const bands = bandAmplitudes(profile, profile, u, spanMm);
  return bands.length > 0 ? spacingMm(bands, 'A') : null;
}
