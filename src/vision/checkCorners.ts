import { SeamgrainError } from '../core/errors.js';
import type { CornersPx } from '../core/image/photoScale.js';
import { distancePx } from './edgePxPerMm.js';

const orderHint =
  "Give the panel's corners clockwise from its top left, in photo pixels: top left, top right, bottom right, bottom left.";
const slackPx = 3;
const nearestPx = 16;

/**
 * Refuses corners that cannot be those of a panel in this photo.
 * @throws SeamgrainError badPanel when they cross, run the wrong way, lie outside the photo,
 *   fall together or are nearly in line
 */
export function checkCorners(corners: CornersPx, photo: { width: number; height: number }): void {
  for (const { x, y } of corners) {
    if (![x, y].every(Number.isFinite)) throw badCorners('A corner is not a number.');
    const out =
      x < -slackPx || y < -slackPx || x > photo.width + slackPx || y > photo.height + slackPx;
    if (out) {
      throw badCorners(
        `The corner (${x}, ${y}) lies outside the photo, which is ${photo.width} x ${photo.height} px.`,
      );
    }
  }
  const turns = corners.map((_, i) => turnAt(corners, i));
  const edges = corners.map((corner, i) => distancePx(corner, corners[(i + 1) % 4]));
  if (edges.some((edge) => edge < nearestPx)) {
    throw badCorners(`Two corners lie within ${nearestPx} px of each other.`);
  }
  if (turns.every((turn) => turn < 0)) {
    throw badCorners('The corners run anticlockwise, which would mirror the panel.');
  }
  if (turns.some((turn) => turn <= 0)) {
    throw badCorners('The corners cross or dent inwards: they do not outline a panel.');
  }
  if (turns.some((turn) => turn < Math.sin((20 * Math.PI) / 180))) {
    throw badCorners('Three corners lie nearly in line: no photo of a rectangle looks like that.');
  }
}

/** Sine of the turn at corner i: positive for a clockwise outline (y runs down). */
function turnAt(corners: CornersPx, i: number): number {
  const before = corners[(i + 3) % 4];
  const at = corners[i];
  const after = corners[(i + 1) % 4];
  const cross = (at.x - before.x) * (after.y - at.y) - (at.y - before.y) * (after.x - at.x);
  return cross / (distancePx(before, at) * distancePx(at, after) || 1);
}

function badCorners(what: string): SeamgrainError {
  return new SeamgrainError('badPanel', what, orderHint);
}
