import type { SeamResult } from '../../core/results/scoreResult.js';
import { type WorstPlace, worstPlaces } from '../words/worstPlaces.js';

/**
 * The places worth a flag: visible by themselves, on a seam that is visible as a whole, or plain
 * enough (V of 2) to be seen on a seam that otherwise is not.
 * @param most how many at most
 */
export function flaggedPlaces(seam: SeamResult, most: number): WorstPlace[] {
  return worstPlaces(seam, { most, leastV: (seam.visibility.v ?? 0) >= 1 ? 1 : 2 });
}
