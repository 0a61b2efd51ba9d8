import type { LengthUnits } from './lengthUnits.js';
import { viewingDistanceText } from './viewingDistanceText.js';

/** Nobody looks at a chest from farther than across a room: 20 ft, 6 m. */
export const roomMm = { in: 6096, mm: 6000 } as const;

/**
 * From how far a joint is last seen, for a table: `6 1/2 ft`, `2 m`, or `beyond 20 ft`.
 * @param mm vanishing distance, mm
 */
export function vanishingText(mm: number, units: LengthUnits): string {
  const room = roomMm[units.units];
  return mm > room ? `beyond ${viewingDistanceText(room, units)}` : viewingDistanceText(mm, units);
}
