import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import { cannotTellLook, type VisibilityLevel, visibilityRamp } from '../ramp/visibilityRamp.js';
import { levelSwatch } from './levelSwatch.js';
import type { ScoreFrame } from './scoreFrame.js';

interface LegendItem {
  readonly text: string;
  readonly sample: (x: number, y: number) => string;
}

const samplePx = 30;

/**
 * The five words with their colours and shapes, then what else needs a word.
 * @param topPx where it may begin
 * @param justVisible words for the dashed line of V = 1
 * @param withUntold whether anything on the picture is hatched
 * @param withPlaced whether any seam was placed by hand
 */
export function scaleLegend(
  topPx: number,
  { widthPx, marginPx, smallPx, bandPx }: ScoreFrame,
  { justVisible, withUntold, withPlaced }: LegendWishes,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const swatch = (level: VisibilityLevel | null) => (x: number, y: number) =>
    levelSwatch(level, x, y - 0.36 * smallPx + bandPx / 2, samplePx, bandPx, hatchId);
  const dashed = (x: number, y: number) =>
    `<path d="M${px(x)} ${px(y - 0.36 * smallPx)}h${samplePx}" fill="none" ${paint(theme, 'stroke', 'ink')} stroke-width="1" stroke-dasharray="5 3"/>`;
  const square = (x: number, y: number) =>
    `<rect x="${px(x + 9)}" y="${px(y - 0.86 * smallPx)}" width="${smallPx}" height="${smallPx}" rx="2" fill="#1c1c1e" stroke="#ffffff" stroke-width="1"/>`;
  const items: LegendItem[] = [
    ...visibilityRamp.map((level) => ({ text: level.word, sample: swatch(level) })),
    ...(withUntold ? [{ text: cannotTellLook.word, sample: swatch(null) }] : []),
    ...(justVisible ? [{ text: justVisible, sample: dashed }] : []),
    ...(withPlaced ? [{ text: 'placed by hand', sample: square }] : []),
  ];
  const rowPx = 1.75 * smallPx;
  const pieces: Piece[] = [];
  let [x, y] = [marginPx, topPx + 1.2 * smallPx];
  for (const { text, sample } of items) {
    const width = samplePx + 7 + textWidthPx(text, smallPx);
    if (x > marginPx && x + width > widthPx - marginPx) [x, y] = [marginPx, y + rowPx];
    const words = textPiece({
      x: x + samplePx + 7,
      y,
      text,
      sizePx: smallPx,
      fill: paint(theme, 'fill', 'ink'),
    });
    pieces.push({ svg: sample(x, y), labels: [] }, words);
    x += width + 20;
  }
  return { piece: joinPieces(pieces), bottomPx: y + 0.5 * smallPx };
}

/** What the legend has to explain besides the five words. */
export interface LegendWishes {
  readonly justVisible: string;
  readonly withUntold: boolean;
  readonly withPlaced: boolean;
}
