import type { LayoutResult } from '../../core/results/layoutResult.js';
import { sizeText } from './sizeText.js';

/** What dressing takes, what rails and strips then measure, and what gives when one is bowed. */
export function dressWords(layout: LayoutResult): string {
  const { pieces, rule, dressMm, face, spare } = layout;
  const at = (mm: number) => sizeText(mm, rule);
  const courses = new Map(pieces.map(({ name, strip, asSet }) => [strip ?? name, asSet.widthMm]));
  const widths = [...courses].map(([name, mm]) => `${name}: ${at(mm)}`).join('; ');
  const work =
    dressMm > 0
      ? `${at(dressMm)} off every sawn long edge, no more, never off the reference edge. Then wide: ${widths}.`
      : `Nothing may come off: the sawn edges must close as they are. Wide: ${widths}.`;
  const give = face
    ? ` (${at(spare.upperMm + dressMm)} to give above, ${at(spare.lowerMm + dressMm)} below)`
    : '';
  return `${work} Bowed when it comes free: rest it, then correct the rail${give}, not the strip; convex before hollow.`;
}
