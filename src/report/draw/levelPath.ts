import type { LevelShape } from '../ramp/visibilityRamp.js';
import { px } from './px.js';

/**
 * The outline of a stretch of band in the shape of its level, from `fromPx` to `toPx` along x.
 * It stands on y = 0 and grows towards negative y. Dots, dashes and teeth keep step over the whole
 * seam whatever stretches it is cut into.
 * @param thickPx thickness of the band, px
 */
export function levelPath(
  shape: LevelShape,
  fromPx: number,
  toPx: number,
  thickPx: number,
): string {
  if (shape === 'dots') return dots(fromPx, toPx, thickPx);
  if (shape === 'dashes') return dashes(fromPx, toPx, thickPx);
  if (shape === 'toothed') return teeth(fromPx, toPx, thickPx);
  return bar(fromPx, toPx, thickPx);
}

function bar(fromPx: number, toPx: number, thickPx: number): string {
  return `M${px(fromPx)} 0H${px(toPx)}V${px(-thickPx)}H${px(fromPx)}Z`;
}

function dots(fromPx: number, toPx: number, thickPx: number): string {
  const [r, pitch] = [thickPx / 2, thickPx * 2.2];
  const arcs = steps(fromPx, toPx, pitch).map((x) => {
    const start = `M${px(x)} ${px(-r)}`;
    const half = (way: 1 | -1) => `a${px(r)} ${px(r)} 0 1 0 ${px(way * 2 * r)} 0`;
    return `${start}${half(1)}${half(-1)}Z`;
  });
  // A stretch too short for a dot still shows.
  return arcs.join('') || bar(fromPx, toPx, thickPx);
}

function dashes(fromPx: number, toPx: number, thickPx: number): string {
  const pitch = thickPx * 3;
  const first = Math.floor(fromPx / pitch);
  const last = Math.ceil(toPx / pitch);
  let path = '';
  for (let index = first; index <= last; index++) {
    const from = Math.max(fromPx, index * pitch);
    const to = Math.min(toPx, index * pitch + 2 * thickPx);
    if (to - from > thickPx * 0.8) path += bar(from, to, thickPx);
  }
  return path || bar(fromPx, toPx, thickPx);
}

function teeth(fromPx: number, toPx: number, thickPx: number): string {
  const base = thickPx * 0.62;
  const pitch = thickPx * 0.8;
  const peaks = steps(fromPx, toPx, pitch)
    .map(
      (x) =>
        `L${px(x)} ${px(-base)}L${px(x + pitch / 2)} ${px(-thickPx)}L${px(x + pitch)} ${px(-base)}`,
    )
    .join('');
  return `M${px(fromPx)} 0V${px(-base)}${peaks}L${px(toPx)} ${px(-base)}V0Z`;
}

/** Starts of whole pitches that fit between the two ends. */
function steps(fromPx: number, toPx: number, pitchPx: number): number[] {
  const first = Math.ceil(fromPx / pitchPx - 1e-6);
  const count = Math.max(0, Math.floor(toPx / pitchPx + 1e-6) - first);
  return Array.from({ length: count }, (_, index) => (first + index) * pitchPx);
}
