import type { PointPx } from '../../core/image/pointPx.js';

/** Reads places in a photo, `x,y x,y …`, in pixels; null when the text is something else. */
export function parsePointsPx(text: string): PointPx[] | null {
  const places = text.trim().split(/\s+/).map(readPlace);
  return places.every((place) => place !== null) ? places : null;
}

function readPlace(text: string): PointPx | null {
  const match = /^(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)$/.exec(text);
  return match ? { x: Number(match[1]), y: Number(match[2]) } : null;
}
