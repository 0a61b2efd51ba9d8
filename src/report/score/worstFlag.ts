import type { Box } from '../draw/box.js';
import { firstFreeBox } from '../draw/firstFreeBox.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { ScoreFrame } from './scoreFrame.js';
import type { SeamTrack } from './seamTrack.js';

/**
 * A flag on the wood at one of the worst places: a small pointer at the line, on the side where
 * the band is not, and a chip with the distance. The chip moves aside, or over the band's side,
 * when its place is taken; when there is none the flag is left out (the strip names it too).
 * @param at the place on the page
 * @param taken what labels keep off
 */
export function worstFlag(
  text: string,
  at: { readonly x: number; readonly y: number },
  track: SeamTrack,
  { panel, smallPx, gapPx, bandPx }: ScoreFrame,
  taken: readonly Box[],
): Piece | null {
  const width = textWidthPx(text, smallPx, true) + 10;
  const height = 1.55 * smallPx;
  const across = Math.abs(track.outX) > Math.abs(track.outY);
  const reach = (side: 1 | -1) => (side === 1 ? gapPx + bandPx + 10 : 15);
  const wishes = ([-1, 1] as const).flatMap((side) =>
    [0, 1, 2].flatMap((ring) =>
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
  const box = firstFreeBox(wishes, taken, bounds, 3);
  if (!box) return null;
  const words = textPiece({
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
    svg: pointer(at, track, box, gapPx + bandPx) + chip + words.svg,
    labels: [{ ...box, text }],
  };
}

/** From the chip to the line; a triangle whose tip stops short of the joint. */
function pointer(
  at: { readonly x: number; readonly y: number },
  { outX, outY }: SeamTrack,
  chip: Box,
  bandReachPx: number,
): string {
  const [chipX, chipY] = [chip.x + chip.width / 2, chip.y + chip.height / 2];
  const side = (chipX - at.x) * outX + (chipY - at.y) * outY > 0 ? 1 : -1;
  const tipOut = side * (side === 1 ? bandReachPx + 2 : 3.5);
  const tip = [at.x + outX * tipOut, at.y + outY * tipOut] as const;
  const foot = [tip[0] + outX * side * 9, tip[1] + outY * side * 9] as const;
  const corner = (way: 1 | -1) =>
    `${px(foot[0] - outY * way * 4.5)} ${px(foot[1] + outX * way * 4.5)}`;
  const nearX = Math.min(Math.max(foot[0], chip.x), chip.x + chip.width);
  const nearY = Math.min(Math.max(foot[1], chip.y), chip.y + chip.height);
  const leader = `<path d="M${px(foot[0])} ${px(foot[1])}L${px(nearX)} ${px(nearY)}" stroke="#ffffff" stroke-width="3"/><path d="M${px(foot[0])} ${px(foot[1])}L${px(nearX)} ${px(nearY)}" stroke="#161616" stroke-width="1.2"/>`;
  return `${leader}<path d="M${px(tip[0])} ${px(tip[1])}L${corner(1)}L${corner(-1)}Z" fill="#161616" stroke="#ffffff" stroke-width="1.2" stroke-linejoin="round"/>`;
}
