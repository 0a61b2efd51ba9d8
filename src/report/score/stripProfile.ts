import { px } from '../draw/px.js';
import { mergeStretches } from './mergeStretches.js';
import type { SeamStretch } from './seamStretches.js';
import { stepsOfV } from './stepsOfV.js';

/**
 * V along a seam as a stepped hill: along +x from the seam's start, growing towards negative y,
 * each stretch in the colour of its level, hatched to the line of 'just visible' where untold.
 * @param stepPx height of one step, px
 * @param lineAttributes stroke of the outline, from `paint`
 */
export function stripProfile(
  stretches: readonly SeamStretch[],
  scale: number,
  stepPx: number,
  hatchId: string,
  lineAttributes: string,
): string {
  const fills = mergeStretches(stretches).map(({ fromMm, toMm, level }) => {
    const inside = stretches.filter((one) => one.fromMm >= fromMm && one.toMm <= toMm);
    const fill = level?.colour ?? `url(#${hatchId})`;
    // Near-white would be the loudest thing on a dark page.
    const soft = level?.fromV === 0 ? ' fill-opacity="0.35"' : '';
    return `<path d="M${px(fromMm * scale)} 0${skyline(inside, scale, stepPx)}V0Z" fill="${fill}"${soft}/>`;
  });
  const first = stretches[0];
  const outline = first
    ? `<path d="M${px(first.fromMm * scale)} 0${skyline(stretches, scale, stepPx)}V0Z" fill="none" ${lineAttributes} stroke-width="1"/>`
    : '';
  return fills.join('') + outline;
}

function skyline(stretches: readonly SeamStretch[], scale: number, stepPx: number): string {
  return stretches
    .map(({ toMm, v }) => `V${px(-stepPx * stepsOfV(v))}H${px(toMm * scale)}`)
    .join('');
}
