import { mmPerInch } from '../../core/units/mmPerInch.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { ScoreFrame } from './scoreFrame.js';

/**
 * A rule along the panel's lower edge, its zero at the left end as a maker would hook a tape.
 * Every mark is an inch (or 10 mm); the numbered ones stand as close as they can be read.
 */
export function lengthRule(frame: ScoreFrame, { units }: LengthUnits, theme: Theme): Piece {
  const { panel, scale, smallPx } = frame;
  const unitPx = scale * (units === 'in' ? mmPerInch : 10);
  const count = Math.floor(panel.width / unitPx + 1e-6);
  const nameOf = (mark: number) => (units === 'in' ? String(mark) : String(mark * 10));
  const widestPx = textWidthPx(nameOf(count), smallPx) + 14;
  const everies = units === 'in' ? [1, 2, 4, 6, 12, 24, 48, 96] : [1, 2, 5, 10, 20, 50, 100, 200];
  const every = everies.find((step) => step * unitPx >= widestPx) ?? count + 1;
  const fine = everies.find((step) => step * unitPx >= 4) ?? every;
  const y = panel.y + panel.height + 2;
  let marks = '';
  const labels: Piece[] = [];
  for (let mark = 0; mark <= count; mark += fine) {
    const x = panel.x + mark * unitPx;
    marks += `M${px(x)} ${px(y)}v${mark % every === 0 ? 7 : 4}`;
    const text = mark === 0 ? `0 ${units}` : nameOf(mark);
    const half = textWidthPx(text, smallPx) / 2;
    const anchor = mark === 0 ? 'start' : 'middle';
    if (mark % every !== 0 || (mark > 0 && x + half > panel.x + panel.width)) continue;
    if (mark > 0 && x - half < panel.x + textWidthPx(`0 ${units}`, smallPx) + 6) continue;
    const fill = paint(theme, 'fill', 'quiet');
    labels.push(textPiece({ x, y: y + 8 + smallPx, text, sizePx: smallPx, anchor, fill }));
  }
  const ticks = `<path d="${marks}" fill="none" ${paint(theme, 'stroke', 'quiet')} stroke-width="0.9"/>`;
  return joinPieces([{ svg: ticks, labels: [] }, ...labels]);
}
