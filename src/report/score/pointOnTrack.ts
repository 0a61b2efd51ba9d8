import type { SeamTrack } from './seamTrack.js';

/** The page point `alongPx` down the seam and `outPx` towards its band. */
export function pointOnTrack(
  track: SeamTrack,
  alongPx: number,
  outPx: number,
): { readonly x: number; readonly y: number } {
  return {
    x: track.x + alongPx * Math.cos(track.angleRad) + outPx * track.outX,
    y: track.y + alongPx * Math.sin(track.angleRad) + outPx * track.outY,
  };
}
