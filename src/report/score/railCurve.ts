import type { Box } from '../draw/box.js';
import { firstFreeBox } from '../draw/firstFreeBox.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Label, Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { justVisibleLine } from './justVisibleLine.js';
import type { SeamStretch } from './seamStretches.js';
import { stripGround } from './stripGround.js';
import { stripProfile } from './stripProfile.js';

/** V across the width of a panel, to stand beside it at the same height. */
export interface RailCurve {
  readonly samples: readonly { readonly yMm: number; readonly v: number | null }[];
  /** Height of the panel, mm. */
  readonly heightMm: number;
  /** Drawn px per mm, the panel's own. */
  readonly scale: number;
  /** Upper left corner of the rail; y is the panel's top. */
  readonly x: number;
  readonly y: number;
  /** Width of one of the five steps, px. */
  readonly stepPx: number;
  /** Places to name beside the rail, the most wanted first; left out where two would collide. */
  readonly marks?: readonly { readonly yMm: number; readonly text: string }[];
  readonly typePx?: number;
}

/**
 * The cost of a cut at each height as a curve that grows to the right of a rail: the eye runs
 * along the board to the cheap places. Same steps, colours and hatching as every strip.
 */
export function railCurve(curve: RailCurve, theme: Theme, hatchId: string): Piece {
  const { heightMm, scale, x, y, stepPx } = curve;
  const lengthPx = heightMm * scale;
  const quiet = paint(theme, 'stroke', 'quiet');
  const hill = stripProfile(stretchesOf(curve), scale, stepPx, hatchId, quiet);
  const ground = stripGround(lengthPx, 5, stepPx, theme);
  const line = justVisibleLine(lengthPx, stepPx, theme);
  const svg = `<g transform="translate(${px(x)} ${px(y)}) rotate(90)">${ground}${hill}${line}</g>`;
  return joinPieces([{ svg, labels: [] }, marksOf(curve, theme)]);
}

function stretchesOf({ samples, heightMm }: RailCurve): SeamStretch[] {
  const sorted = [...samples].sort((a, b) => a.yMm - b.yMm);
  const middles = sorted.slice(1).map((sample, i) => (sorted[i]!.yMm + sample.yMm) / 2);
  const ends = [0, ...middles, heightMm];
  return sorted.map(({ v }, i) => ({
    fromMm: ends[i]!,
    toMm: ends[i + 1]!,
    v,
    level: levelOfVisibility(v),
  }));
}

function marksOf(curve: RailCurve, theme: Theme): Piece {
  const { marks = [], heightMm, scale, x, y, stepPx, typePx = 13 } = curve;
  const left = x + 5 * stepPx + 4;
  const bounds: Box = { x: left, y: y - typePx, width: 1e4, height: heightMm * scale + 2 * typePx };
  const taken: Label[] = [];
  const pieces = marks.flatMap(({ yMm, text }) => {
    const tipY = y + yMm * scale;
    const width = textWidthPx(text, typePx) + 14;
    const wish = { x: left, y: tipY - 0.6 * typePx, width, height: 1.2 * typePx };
    const box = firstFreeBox([wish], taken, bounds, 2);
    if (!box) return [];
    taken.push({ ...box, text });
    const mark = `<path d="M${px(left)} ${px(tipY)}l8 -4.5v9Z" ${paint(theme, 'fill', 'ink')}/>`;
    const fill = paint(theme, 'fill', 'ink');
    const words = textPiece({ x: left + 12, y: tipY + 0.36 * typePx, text, sizePx: typePx, fill });
    return [{ svg: mark + words.svg, labels: [{ ...box, text }] }];
  });
  return joinPieces(pieces);
}
