import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { LengthUnit } from './project.js';

/** The page's unit as the report's words want it. */
export const lengthUnitsOf = (unit: LengthUnit): LengthUnits =>
  unit === 'inch' ? { units: 'in', denominator: 16 } : { units: 'mm' };
