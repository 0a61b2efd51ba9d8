import type { ArrangedBoard } from '../../core/results/arrangeResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import { cutInMiddle } from '../words/cutInMiddle.js';
import type { LaidBoard } from './arrangedLayout.js';
import { boardName } from './boardName.js';

/**
 * The board's name on its own wood, with an arrow for one that lies turned and a word for the
 * other face: white on a dark ground, so that it reads on any wood.
 */
export function boardTag(laid: LaidBoard, board: ArrangedBoard, frame: ScoreFrame): Piece {
  const { panel, scale, smallPx } = frame;
  const heightPx = laid.widthMm * scale;
  const sizePx = Math.max(8, Math.min(smallPx, 0.6 * heightPx));
  const turnPx = board.turned ? 1.5 * sizePx : 0;
  const roomPx = laid.lengthMm * scale - 22 - turnPx;
  const text = fitted(
    `${boardName(board, Number.POSITIVE_INFINITY)}${board.face === 'B' ? ', other face' : ''}`,
    sizePx,
    roomPx,
  );
  const x = panel.x + laid.leftMm * scale + 6;
  const middle = panel.y + (laid.topMm + laid.widthMm / 2) * scale;
  const width = textWidthPx(text, sizePx) + 10 + turnPx;
  const ground = `<rect x="${px(x)}" y="${px(middle - 0.75 * sizePx)}" width="${px(width)}" height="${px(1.5 * sizePx)}" rx="3" fill="#1c1c1e" fill-opacity="0.82"/>`;
  const words = textPiece({
    ...{ x: x + 5, y: middle + 0.34 * sizePx, text, sizePx, fill: 'fill="#ffffff"' },
  });
  const sign = board.turned ? turnSign(x + width - 0.9 * sizePx, middle, 0.42 * sizePx) : '';
  return joinPieces([{ svg: ground, labels: [] }, words, { svg: sign, labels: [] }]);
}

/** The text, its middle cut out to fit. */
function fitted(text: string, sizePx: number, roomPx: number): string {
  let kept = text;
  for (let most = text.length - 1; most > 0 && textWidthPx(kept, sizePx) > roomPx; most--) {
    kept = cutInMiddle(text, most);
  }
  return kept;
}

/** An arrow half round: turned end for end. */
function turnSign(x: number, y: number, r: number): string {
  const arc = `M${px(x - r)} ${px(y)}A${px(r)} ${px(r)} 0 1 1 ${px(x)} ${px(y + r)}`;
  const head = `M${px(x)} ${px(y + r)}l${px(0.75 * r)} ${px(-0.75 * r)}M${px(x)} ${px(y + r)}l${px(0.85 * r)} ${px(0.5 * r)}`;
  return `<path d="${arc}${head}" fill="none" stroke="#ffffff" stroke-width="1.4"><title>turned end for end</title></path>`;
}
