import { cannotTellLook } from '../ramp/visibilityRamp.js';

/**
 * The hatching of what cannot be told, as an SVG pattern.
 * @param id unique in the page
 */
export function hatchPattern(id: string): string {
  const { ground, stroke } = cannotTellLook;
  return `<pattern id="${id}" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="5" height="5" fill="${ground}"/><rect width="1.6" height="5" fill="${stroke}"/></pattern>`;
}
