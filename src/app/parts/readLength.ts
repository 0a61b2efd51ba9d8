import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import type { LengthUnit } from '../state/project.js';

/** Reads a length as typed on the page: a bare number is in the unit that the page shows. */
export function readLength(text: string, unit: LengthUnit): number {
  const bare = /^[\d\s./,\-–]+$/.test(text.trim());
  return parseLengthMm(bare ? `${text.trim()}${unit === 'inch' ? 'in' : 'mm'}` : text);
}

/** A length in the field: inches to the 64th, or millimetres. */
export function writeLength(mm: number, unit: LengthUnit): string {
  return unit === 'inch' ? formatInches(mm, 64) : formatMm(mm, 2);
}
