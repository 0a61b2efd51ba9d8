import { hatchPattern } from '../draw/hatchPattern.js';
import type { VisibilityLevel } from '../ramp/visibilityRamp.js';
import { levelSwatch } from '../score/levelSwatch.js';

/**
 * A level's sample as a small inline picture for tables and sentences.
 * @param level null draws what cannot be told
 * @param id unique in the page; used for the hatching only
 */
export function levelSwatchHtml(level: VisibilityLevel | null, id: string): string {
  const defs = level ? '' : `<defs>${hatchPattern(id)}</defs>`;
  return `<svg class="swatch" width="30" height="12" viewBox="0 0 30 12" aria-hidden="true">${defs}${levelSwatch(level, 1, 11, 28, 9, id)}</svg>`;
}
