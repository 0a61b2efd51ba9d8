import type { CornersPx } from '../image/photoScale.js';
import { radFromDeg } from '../units/radFromDeg.js';

/**
 * Corners of a panel seen by a pinhole camera that stands a little off square.
 *
 * The panel is turned by yaw about its vertical and pitch about its horizontal middle line, seen
 * from `distanceMm`, rolled in the frame, and scaled to fill a share of it.
 *
 * @param options.fill share of the frame's width or height that the panel takes, default 0.9.
 * @param options.yawDeg @param options.pitchDeg @param options.rollDeg default 0.
 * @param options.distanceMm distance to the panel's middle, default 1.6 times its longer side.
 * @returns corners in photo px, clockwise from the panel's top left.
 */
export function aimCamera(options: {
  readonly panelWidthMm: number;
  readonly panelHeightMm: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fill?: number;
  readonly yawDeg?: number;
  readonly pitchDeg?: number;
  readonly rollDeg?: number;
  readonly distanceMm?: number;
}): CornersPx {
  const { panelWidthMm: w, panelHeightMm: h, widthPx, heightPx } = options;
  const distance = options.distanceMm ?? 1.6 * Math.max(w, h);
  const [yaw, pitch, roll] = [options.yawDeg, options.pitchDeg, options.rollDeg].map((deg) =>
    radFromDeg(deg ?? 0),
  ) as [number, number, number];
  const seen = [
    [-w / 2, -h / 2],
    [w / 2, -h / 2],
    [w / 2, h / 2],
    [-w / 2, h / 2],
  ].map(([x, y]) => {
    const away = Math.sin(yaw) * x! + Math.sin(pitch) * Math.cos(yaw) * y!;
    const px = (Math.cos(yaw) * x! * distance) / (distance + away);
    const py = (Math.cos(pitch) * y! * distance) / (distance + away);
    return [Math.cos(roll) * px - Math.sin(roll) * py, Math.sin(roll) * px + Math.cos(roll) * py];
  }) as [number, number][];
  const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const fill = options.fill ?? 0.9;
  const scale = fill * Math.min(widthPx / (right - left), heightPx / (bottom - top));
  const corner = (i: 0 | 1 | 2 | 3) => ({
    x: widthPx / 2 + scale * (seen[i]![0] - (left + right) / 2),
    y: heightPx / 2 + scale * (seen[i]![1] - (top + bottom) / 2),
  });
  return [corner(0), corner(1), corner(2), corner(3)];
}
