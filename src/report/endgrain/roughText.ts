import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';

/** Steps that a length is rounded to when its error is at least so large, mm. */
const steps = {
  in: [
    { fromMm: 12.7, stepMm: 12.7 },
    { fromMm: 6.35, stepMm: 6.35 },
  ],
  mm: [
    { fromMm: 12, stepMm: 10 },
    { fromMm: 6, stepMm: 5 },
  ],
} as const;

/** A length no finer than its error deserves: quarters and halves of an inch, or 5 and 10 mm. */
export function roughText(mm: number, seMm: number, units: LengthUnits): string {
  const step = steps[units.units === 'mm' ? 'mm' : 'in'].find(({ fromMm }) => seMm >= fromMm);
  if (step) return placeText(Math.max(1, Math.round(mm / step.stepMm)) * step.stepMm, units);
  return mm < 10 ? smallLengthText(mm, units) : placeText(mm, units);
}
