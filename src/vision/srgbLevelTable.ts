import { linearLight } from '../core/colour/linearLight.js';

/** Steps of the table; fine enough that the darkest level spans twenty of them. */
export const srgbLevelSteps = 65535;

let table: Uint8Array | null = null;

/**
 * sRGB level (0 to 255, rounded) of linear light, for loops over pixels: entry
 * `light * srgbLevelSteps`, rounded. The inverse of `linearLight`.
 * @returns 65536 levels, shared: do not write into it
 */
export function srgbLevelTable(): Uint8Array {
  table ??= makeTable();
  return table;
}

function makeTable(): Uint8Array {
  const levels = new Uint8Array(srgbLevelSteps + 1);
  let level = 0;
  for (let step = 0; step <= srgbLevelSteps; step++) {
    while (level < 255 && linearLight(level + 0.5) * srgbLevelSteps < step) level++;
    levels[step] = level;
  }
  return levels;
}
