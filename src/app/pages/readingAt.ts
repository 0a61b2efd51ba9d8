import type { GrainCell } from '../../core/results/grainResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { cueText } from '../../report/words/cueText.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { placeText } from '../../report/words/placeText.js';
import { smallLengthText } from '../../report/words/smallLengthText.js';

/** What a place along a seam says: `Upper joint, 14 3/8 in from the left: shows (2.4); the lines step 3/32 in.` */
export function readingAlong(
  { seam, name, runs }: PlacedSeam,
  alongMm: number,
  units: LengthUnits,
): string {
  const window = seam.windows.reduce<(typeof seam.windows)[number] | null>(
    (best, each) =>
      best === null || Math.abs(each.atMm - alongMm) < Math.abs(best.atMm - alongMm) ? each : best,
    null,
  );
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const share = alongMm / (Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1);
  const fromMm = runs === 'along' ? x1Mm + share * (x2Mm - x1Mm) : y1Mm + share * (y2Mm - y1Mm);
  const edge = runs === 'along' ? 'left' : 'top';
  const place = `${capital(name)}, ${placeText(fromMm, units)} from the ${edge}`;
  if (!window || window.v === null) return `${place}: the photo cannot tell.`;
  const word = levelOfVisibility(window.v)?.word ?? '';
  return `${place}: ${word} (${window.v.toFixed(1)}); ${cueText(window, units)}.`;
}

/** What a place on the panel says: where it is, and how the grain runs there. */
export function readingOn(
  xMm: number,
  yMm: number,
  cells: readonly GrainCell[],
  units: LengthUnits,
): string {
  const place = `${placeText(xMm, units)} from the left, ${placeText(yMm, units)} from the top`;
  const cell = cells.reduce<GrainCell | null>((best, each) => {
    const apart = Math.hypot(each.xMm - xMm, each.yMm - yMm);
    return apart < (best ? Math.hypot(best.xMm - xMm, best.yMm - yMm) : 12) ? each : best;
  }, null);
  if (!cell || cell.angleDeg === null) return place;
  const spacing =
    cell.spacingMm === null ? '' : `, lines ${smallLengthText(cell.spacingMm, units)} apart`;
  return `${place}: grain at ${cell.angleDeg.toFixed(1)}°${spacing}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
