import { StreakNoise } from '../random/streakNoise.js';
import type { PieceCanvas } from './pieceCanvas.js';

/**
 * Adds one ray fleck to the tone: a ragged ribbon lying across the grain, `ends` apart in height
 * along the fibre and `widthPx` long across it, slanted a little as ray sheets are.
 */
export function splatFleck(
  canvas: PieceCanvas,
  ends: readonly [number, number, number, number],
  widthPx: number,
  strength: number,
  seed: number,
): void {
  const [x0, y0, x1, y1] = ends;
  const { width, height, tone } = canvas;
  const alongX = x1 - x0;
  const alongY = y1 - y0;
  const length = Math.hypot(alongX, alongY);
  if (length < 1) return;
  const cx = (x0 + x1) / 2;
  const cy = (y0 + y1) / 2;
  const ux = alongX / length;
  const uy = alongY / length;
  const slant = ((seed & 255) / 255 - 0.5) * 1.1;
  const ragged = new StreakNoise(seed, 0.32, 0.5);
  const reach = (length + widthPx * (1 + Math.abs(slant))) / 2 + 1;
  const left = Math.max(0, Math.floor(cx - reach));
  const right = Math.min(width - 1, Math.ceil(cx + reach));
  const top = Math.max(0, Math.floor(cy - reach));
  const bottom = Math.min(height - 1, Math.ceil(cy + reach));
  const soft = 2.5 / Math.min(length, widthPx);
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const px = x + 0.5 - cx;
      const py = y + 0.5 - cy;
      const across = (2 * (-uy * px + ux * py)) / widthPx;
      const along = (2 * (ux * px + uy * py)) / length - slant * across * (widthPx / length);
      if (across < -1.2 || across > 1.2 || along < -1.3 || along > 1.3) continue;
      const edge = 1 - along * along - across * across + 0.55 * ragged.at(along, across);
      if (edge <= 0) continue;
      tone[y * width + x]! += strength * Math.min(1, edge / (soft + 0.25));
    }
  }
}
