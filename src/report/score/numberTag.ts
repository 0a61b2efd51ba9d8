import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';

/** The number of a seam: a disc when it was found in the photo, a square when placed by hand. */
export function numberTag(
  number: number,
  found: 'photo' | 'placed',
  centre: { readonly x: number; readonly y: number },
  radiusPx: number,
): Piece {
  const { x, y } = centre;
  const dress = 'fill="#1c1c1e" stroke="#ffffff" stroke-width="1.5"';
  const side = px(2 * radiusPx);
  const shape =
    found === 'photo'
      ? `<circle cx="${px(x)}" cy="${px(y)}" r="${px(radiusPx)}" ${dress}/>`
      : `<rect x="${px(x - radiusPx)}" y="${px(y - radiusPx)}" width="${side}" height="${side}" rx="2" ${dress}/>`;
  const words = textPiece({
    x,
    y: y + 0.48 * radiusPx,
    text: String(number),
    sizePx: (number > 9 ? 1.1 : 1.3) * radiusPx,
    anchor: 'middle',
    bold: true,
    fill: 'fill="#ffffff"',
  });
  const box = { x: x - radiusPx, y: y - radiusPx, width: 2 * radiusPx, height: 2 * radiusPx };
  return { svg: shape + words.svg, labels: [{ ...box, text: String(number) }] };
}
