import type { FaceRings } from '../../core/results/faceRings.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';

/** How the rings stand to a face, in a few sentences; none when it was not asked for. */
export function describeFaceRings(rings: FaceRings | undefined, units: LengthUnits): string[] {
  if (!rings) return [];
  const told = rings.ringAngle.filter((strip) => strip.angleDeg !== null);
  if (told.length === 0 || !rings.overPith) return [...rings.notes];
  const least = told.reduce((a, b) => (b.angleDeg! < a.angleDeg! ? b : a));
  const most = told.reduce((a, b) => (b.angleDeg! > a.angleDeg! ? b : a));
  const at = (strip: (typeof told)[number]) =>
    `${strip.angleDeg!.toFixed(0)} deg (give or take ${strip.seDeg.toFixed(0)}) ${placeText(strip.yMm, units)} from the top`;
  return [
    `The pith lay over or under the line ${placeText(rings.overPith.yMm, units)} from the top, give or take ${placeText(rings.overPith.seMm, units)}.`,
    `The rings stand to this face at ${at(least)} and at ${at(most)}.`,
    ...rings.notes,
  ];
}
