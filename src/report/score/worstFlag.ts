import type { Box } from '../draw/box.js';
import { boxesOverlap } from '../draw/boxesOverlap.js';
import { firstFreeBox } from '../draw/firstFreeBox.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import { flagPointer } from './flagPointer.js';
import type { ScoreFrame } from './scoreFrame.js';
import type { SeamTrack } from './seamTrack.js';

/**
 * A flag on the wood at one of the worst places: a small pointer at the line, on the side where
 * the band is not, and a chip with the distance. The chip moves aside, or over the band's side,
 * when its place is taken; when there is none the flag is left out (the strip names it too).
 * @param at the place on the page
 * @param taken what chips keep off
 * @param words what leaders must not cross: chips, pointers and numbers that stand already
 */
export function worstFlag(
  text: string,
  at: { readonly x: number; readonly y: number },
  track: SeamTrack,
  frame: ScoreFrame,
  taken: readonly Box[],
  words: readonly Box[],
): { readonly piece: Piece; readonly boxes: readonly Box[] } | null {
  const { panel, smallPx, gapPx, bandPx } = frame;
  const width = textWidthPx(text, smallPx, true) + 10;
  const height = 1.55 * smallPx;
  const across = Math.abs(track.outX) > Math.abs(track.outY);
  const reach = (side: 1 | -1) => (side === 1 ? gapPx + bandPx + 10 : 15);
  const wishes = ([-1, 1] as const).flatMap((side) =>
    [0, 1].flatMap((ring) =>
      [0, 0.42, -0.42, 0.9, -0.9].map((shift) => {
        const out = side * (reach(side) + ring * (height + 4) + (across ? width : height) / 2);
        const centreX = at.x + track.outX * out + (across ? 0 : shift * width);
        const centreY = at.y + track.outY * out + (across ? shift * 2 * height : 0);
        return { x: centreX - width / 2, y: centreY - height / 2, width, height };
      }),
    ),
  );
  const bounds = {
    x: panel.x + 2,
    y: panel.y + 2,
    width: panel.width - 4,
    height: panel.height - 4,
  };
  const clear = wishes.filter((wish) => {
    const leader = flagPointer(at, track, wish, frame).box;
    return words.every((other) => !boxesOverlap(leader, other, 1));
  });
  const box = firstFreeBox(clear, [...taken, ...words], bounds, 3);
  if (!box) return null;
  const pointer = flagPointer(at, track, box, frame);
  const line = textPiece({
    x: box.x + width / 2,
    y: box.y + 1.12 * smallPx,
    text,
    sizePx: smallPx,
    anchor: 'middle',
    bold: true,
    fill: 'fill="#161616"',
  });
  const chip = `<rect x="${px(box.x)}" y="${px(box.y)}" width="${px(width)}" height="${px(height)}" rx="3" fill="#ffffff" fill-opacity="0.94" stroke="#161616" stroke-width="0.8"/>`;
  return {
    piece: { svg: pointer.svg + chip + line.svg, labels: [{ ...box, text }] },
    boxes: [box, pointer.box],
  };
}
