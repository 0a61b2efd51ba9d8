import { StreakNoise } from '../random/streakNoise.js';
import type { PieceCanvas } from './pieceCanvas.js';

/** One ray fleck as it lies on the canvas; lengths in px. */
export interface Fleck {
  readonly x: number;
  readonly y: number;
  /** Unit vector along the fibre. */
  readonly fibreX: number;
  readonly fibreY: number;
  /** Extent along the fibre (height of the ray) and across it (how far the sheet stays in view). */
  readonly heightPx: number;
  readonly widthPx: number;
  /** Lean of the ribbon's middle line: along-fibre shift per unit across, and its bend. */
  readonly lean: number;
  readonly bend: number;
  readonly strength: number;
  readonly seed: number;
}

/**
 * Adds one ray fleck to the tone: a ragged ribbon lying across the grain. Where a ray lies at the
 * face no vessel can, so pores under it fade.
 */
export function splatFleck(canvas: PieceCanvas, fleck: Fleck): void {
  const { width, height, tone, pores } = canvas;
  const { x: cx, y: cy, fibreX, fibreY, heightPx, widthPx, lean, bend } = fleck;
  const ragged = new StreakNoise(fleck.seed, 0.9, 0.07 * Math.max(1, 30 / widthPx));
  const wavy = new StreakNoise(fleck.seed + 1, 9, 0.45);
  const halfAlong = heightPx * 0.8 + (widthPx / 2) * (Math.abs(lean) + Math.abs(bend));
  const reachX = Math.abs(fibreX) * halfAlong + Math.abs(fibreY) * widthPx * 0.5 + 1;
  const reachY = Math.abs(fibreY) * halfAlong + Math.abs(fibreX) * widthPx * 0.5 + 1;
  const left = Math.max(0, Math.floor(cx - reachX));
  const right = Math.min(width - 1, Math.ceil(cx + reachX));
  const top = Math.max(0, Math.floor(cy - reachY));
  const bottom = Math.min(height - 1, Math.ceil(cy + reachY));
  const soft = 1.5 / heightPx + 0.12;
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const px = x + 0.5 - cx;
      const py = y + 0.5 - cy;
      const across = (2 * (fibreX * py - fibreY * px)) / widthPx;
      if (across <= -1 || across >= 1) continue;
      const middle = ((lean * across + bend * across * across) * widthPx) / 2;
      const along = (2 * (fibreX * px + fibreY * py - middle)) / heightPx;
      if (along < -1.6 || along > 1.6) continue;
      const bulge = Math.sqrt(1 - across * across) * (0.75 + 0.35 * wavy.at(0, across));
      const edge = bulge - Math.abs(along) + 0.3 * ragged.at(along, across);
      if (edge <= 0) continue;
      const cover = Math.min(1, edge / soft);
      const k = y * width + x;
      tone[k]! += fleck.strength * cover;
      pores[k]! *= 1 - 0.75 * cover;
    }
  }
}
