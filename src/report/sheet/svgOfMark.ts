import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import type { Grey, Mark } from './mark.js';

/** A mark as SVG. */
export function svgOfMark(mark: Mark): string {
  switch (mark.kind) {
    case 'rect': {
      const at = `x="${px(mark.x)}" y="${px(mark.y)}" width="${px(mark.width)}" height="${px(mark.height)}"`;
      return `<rect ${at} ${inkOf(mark)}/>`;
    }
    case 'line': {
      const at = `x1="${px(mark.x1)}" y1="${px(mark.y1)}" x2="${px(mark.x2)}" y2="${px(mark.y2)}"`;
      const dash = mark.dashPx ? ` stroke-dasharray="${px(mark.dashPx)}"` : '';
      return `<line ${at} stroke="${greyHex(mark.stroke)}" stroke-width="${px(mark.strokePx)}"${dash}/>`;
    }
    case 'polygon': {
      const points = mark.points.map(([x, y]) => `${px(x)},${px(y)}`).join(' ');
      return `<polygon points="${points}" ${inkOf(mark)}/>`;
    }
    case 'circle':
      return `<circle cx="${px(mark.x)}" cy="${px(mark.y)}" r="${px(mark.r)}" ${inkOf(mark)}/>`;
    case 'text':
      return textPiece({ ...mark, fill: `fill="${greyHex(mark.fill ?? 0)}"` }).svg;
    case 'image': {
      const at = `x="${px(mark.x)}" y="${px(mark.y)}" width="${px(mark.width)}" height="${px(mark.height)}"`;
      return `<image ${at} preserveAspectRatio="none" href="data:image/jpeg;base64,${mark.picture.base64}"/>`;
    }
  }
}

function inkOf(shape: { fill?: Grey; stroke?: Grey; strokePx?: number }): string {
  const fill = shape.fill === undefined ? 'none' : greyHex(shape.fill);
  const stroke =
    shape.stroke === undefined
      ? ''
      : ` stroke="${greyHex(shape.stroke)}" stroke-width="${px(shape.strokePx ?? 1)}"`;
  return `fill="${fill}"${stroke}`;
}

function greyHex(grey: Grey): string {
  const byte = Math.round(255 * grey)
    .toString(16)
    .padStart(2, '0');
  return `#${byte}${byte}${byte}`;
}
