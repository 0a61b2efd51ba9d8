import { type Climate, parseClimate } from '../../core/units/parseClimate.js';

/** Reads climates by month, separated by spaces or commas: `35%@68F 38%@68F …`. */
export function parseMonths(text: string): readonly Climate[] {
  return text
    .split(/[\s,;]+/)
    .filter((part) => part !== '')
    .map(parseClimate);
}
