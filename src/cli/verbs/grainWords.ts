import type { GrainResult } from '../../core/results/grainResult.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { placeText } from '../../report/words/placeText.js';
import { smallLengthText } from '../../report/words/smallLengthText.js';

/** Cells whose angle is surer than this count as read, as the accuracy bench does. */
const sureSeDeg = 1;

/** Says a grain field in a few sentences. */
export function grainWords(result: GrainResult, units: LengthUnits): string[] {
  const angles = result.cells.flatMap(({ angleDeg }) => (angleDeg === null ? [] : [angleDeg]));
  const notes = [...new Set(result.notes)];
  if (angles.length === 0) return ['The grain cannot be read anywhere on this panel.', ...notes];
  const middle = middleAngleDeg(angles);
  const off = angles.map((angle) => wrapDeg(angle - middle)).sort((a, b) => a - b);
  const [low, high] = [0.1, 0.9].map((part) => off[Math.floor(part * (off.length - 1))] + middle);
  const sure = result.cells.filter(({ angleSeDeg }) => (angleSeDeg ?? 90) <= sureSeDeg).length;
  const spacings = result.cells
    .flatMap(({ spacingMm }) => (spacingMm === null ? [] : [spacingMm]))
    .sort((a, b) => a - b);
  const lines =
    spacings.length > 0
      ? `Its lines are about ${smallLengthText(spacings[spacings.length >> 1], units)} apart.`
      : 'How far its lines are apart cannot be told.';
  return [
    `The grain runs at ${signed(middle)} to the length, mostly from ${signed(low)} to ${signed(high)} (downhill to the right is plus).`,
    lines,
    `Read in ${angles.length} of ${result.cells.length} places, in ${sure} to within ${sureSeDeg} degree; the panel is ${placeText(result.panel.widthMm, units)} by ${placeText(result.panel.heightMm, units)}.`,
    ...notes,
  ];
}

/** Circular middle of directions that repeat after 180 degrees. */
function middleAngleDeg(angles: readonly number[]): number {
  const double = angles.map((angle) => (2 * angle * Math.PI) / 180);
  const sine = double.reduce((sum, angle) => sum + Math.sin(angle), 0);
  const cosine = double.reduce((sum, angle) => sum + Math.cos(angle), 0);
  return (Math.atan2(sine, cosine) * 90) / Math.PI;
}

function wrapDeg(angle: number): number {
  return angle - 180 * Math.round(angle / 180);
}

function signed(degrees: number): string {
  return `${degrees.toFixed(1).replace(/^-0\.0$/, '0.0')} deg`;
}
