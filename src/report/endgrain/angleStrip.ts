import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import { cutWordOf, cutWords } from './cutWords.js';

/**
 * The ring angle across the width, at the same x as the photo above it: columns in the colour of
 * their cut, as high as the angle, with its error as a fine bar; 0 deg at the bottom, 90 on top.
 *
 * @param tallPx height of 90 deg.
 */
export function angleStrip(
  { ringAngle, panel }: EndgrainResult,
  topPx: number,
  frame: ScoreFrame,
  theme: Theme,
  prefix: string,
  tallPx = Math.max(90, Math.min(170, 0.16 * frame.widthPx)),
): { readonly piece: Piece; readonly bottomPx: number } {
  const { panel: box, scale, smallPx } = frame;
  const top = topPx + 1.7 * smallPx;
  const bottom = top + tallPx;
  const yOf = (deg: number) => bottom - (tallPx * deg) / 90;
  const step = (panel.widthMm / ringAngle.length) * scale;
  let columns = '';
  let bars = '';
  for (const { xMm, angleDeg, seDeg } of ringAngle) {
    const left = box.x + xMm * scale - step / 2;
    const word = cutWordOf(angleDeg);
    const place = `x="${px(left)}" y="${px(yOf(angleDeg))}" width="${px(step - 0.6)}" height="${px(bottom - yOf(angleDeg))}"`;
    columns += `<rect ${place} fill="${word.colour}"/><rect ${place} fill="url(#${prefix}-${word.name})"/>`;
    const [low, high] = [Math.max(0, angleDeg - seDeg), Math.min(90, angleDeg + seDeg)];
    bars += `M${px(left + step / 2)} ${px(yOf(low))}V${px(yOf(high))}`;
  }
  const rules = [0, 30, 60, 90]
    .map((deg) => `M${px(box.x)} ${px(yOf(deg))}h${px(box.width)}`)
    .join('');
  const quiet = paint(theme, 'fill', 'quiet');
  const names = cutWords.map(({ fromDeg }) => {
    const text = `${fromDeg + 30} deg`;
    const [width, y] = [textWidthPx(text, smallPx), yOf(fromDeg + 30) + 2];
    const plate = `<rect x="${px(box.x + box.width - width - 9)}" y="${px(y)}" width="${px(width + 8)}" height="${px(1.35 * smallPx)}" ${paint(theme, 'fill', 'paper')} fill-opacity="0.85"/>`;
    const x = box.x + box.width - 5;
    const style = {
      x,
      y: y + 1.02 * smallPx,
      text,
      sizePx: smallPx,
      anchor: 'end',
      fill: quiet,
    } as const;
    return joinPieces([{ svg: plate, labels: [] }, textPiece(style)]);
  });
  const title = textPiece({
    x: box.x,
    y: topPx + smallPx,
    text: 'Rings to the wide face, at mid-thickness',
    sizePx: smallPx,
    fill: quiet,
  });
  const svg = `${columns}<path d="${rules}" fill="none" ${paint(theme, 'stroke', 'rule')} stroke-width="1"/><path d="${bars}" fill="none" ${paint(theme, 'stroke', 'ink')} stroke-width="1.6"/>`;
  return { piece: joinPieces([{ svg, labels: [] }, title, ...names]), bottomPx: bottom };
}
