import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { roughText } from './roughText.js';

const strokeColour = '#ffffff';
const shadeColour = '#161616';

/** Circles about the pith, short strokes along the rings at mid-thickness, and the pith itself. */
export function endMarks(
  result: EndgrainResult,
  frame: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
  prefix: string,
): Piece {
  const { x, y, width, height } = frame.panel;
  const clipId = `${prefix}-clip`;
  const clip = `<clipPath id="${clipId}"><rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}"/></clipPath>`;
  const inside = `${circles(result, frame)}${strokes(result, frame)}`;
  const marks = `${clip}<g clip-path="url(#${clipId})" fill="none">${inside}</g>`;
  return joinPieces([{ svg: marks, labels: [] }, pithMark(result, frame, units, theme)]);
}

/** A few rings as the fit has them, every so many millimetres. */
function circles({ pith, panel }: EndgrainResult, { panel: box, scale }: ScoreFrame): string {
  if (!pith) return '';
  const corners = [
    [0, 0],
    [panel.widthMm, 0],
    [0, panel.heightMm],
    [panel.widthMm, panel.heightMm],
  ].map(([cx, cy]) => Math.hypot(cx! - pith.xMm, cy! - pith.yMm));
  const dx = Math.max(0, -pith.xMm, pith.xMm - panel.widthMm);
  const dy = Math.max(0, -pith.yMm, pith.yMm - panel.heightMm);
  const [near, far] = [Math.hypot(dx, dy), Math.max(...corners)];
  const step = [5, 10, 20].find((mm) => (far - near) / mm <= 14) ?? 40;
  let path = '';
  for (let mm = Math.ceil(Math.max(near, step / 2) / step) * step; mm < far; mm += step) {
    const r = px(mm * scale);
    const [cx, cy] = [box.x + pith.xMm * scale, box.y + pith.yMm * scale];
    path += `M${px(cx - mm * scale)} ${px(cy)}a${r} ${r} 0 1 0 ${px(2 * mm * scale)} 0a${r} ${r} 0 1 0 ${px(-2 * mm * scale)} 0Z`;
  }
  return `<path d="${path}" stroke="${shadeColour}" stroke-opacity="0.35" stroke-width="2.4"/><path d="${path}" stroke="${strokeColour}" stroke-opacity="0.8" stroke-width="1"/>`;
}

const strokeStepPx = 20;

/** The ring angle where it was read, as a short stroke along the ring; fewer on a small picture. */
function strokes({ ringAngle, panel }: EndgrainResult, { panel: box, scale }: ScoreFrame): string {
  const stepPx = (panel.widthMm * scale) / Math.max(1, ringAngle.length);
  const every = Math.max(1, Math.ceil(strokeStepPx / stepPx));
  const half = Math.min(0.3 * panel.heightMm * scale, 0.35 * every * stepPx + 2 * scale);
  const path = ringAngle
    .filter((_, k) => k % every === every >> 1)
    .map(({ xMm, leanDeg }) => {
      const angle = (leanDeg * Math.PI) / 180;
      const [cx, cy] = [box.x + xMm * scale, box.y + (panel.heightMm / 2) * scale];
      // Strokes that lie flat are kept apart, or they would read as one line.
      const long = Math.min(half, (0.36 * every * stepPx) / (Math.abs(Math.cos(angle)) + 1e-6));
      const [dx, dy] = [long * Math.cos(angle), long * Math.sin(angle)];
      return `M${px(cx - dx)} ${px(cy - dy)}L${px(cx + dx)} ${px(cy + dy)}`;
    })
    .join('');
  const thin = box.width < 500 ? 0.7 : 1;
  return `<path d="${path}" stroke="${shadeColour}" stroke-opacity="0.75" stroke-width="${px(4.4 * thin)}" stroke-linecap="round"/><path d="${path}" stroke="${strokeColour}" stroke-width="${px(2.2 * thin)}" stroke-linecap="round"/>`;
}

function pithMark(
  { pith, panel }: EndgrainResult,
  frame: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
): Piece {
  if (!pith) return { svg: '', labels: [] };
  const { panel: box, scale, textPx, smallPx } = frame;
  const inside =
    pith.xMm >= 0 && pith.xMm <= panel.widthMm && pith.yMm >= 0 && pith.yMm <= panel.heightMm;
  const [cx, cy] = [box.x + pith.xMm * scale, box.y + pith.yMm * scale];
  if (inside) {
    const r = Math.max(5, pith.seMm * scale);
    const ring = `M${px(cx - r)} ${px(cy)}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0ZM${px(cx - r - 5)} ${px(cy)}h${px(2 * r + 10)}M${px(cx)} ${px(cy - r - 5)}v${px(2 * r + 10)}`;
    const svg = `<path d="${ring}" fill="none" stroke="${shadeColour}" stroke-width="4"/><path d="${ring}" fill="none" stroke="${strokeColour}" stroke-width="1.8"/>`;
    return { svg, labels: [] };
  }
  // Off the photo: an arrow at its edge and how far.
  const edgeX = Math.min(box.x + box.width, Math.max(box.x, cx));
  const above = pith.yMm < 0;
  const below = pith.yMm > panel.heightMm;
  const edgeY = above
    ? box.y
    : below
      ? box.y + box.height
      : Math.min(box.y + box.height, Math.max(box.y, cy));
  const away = Math.hypot(cx - edgeX, cy - edgeY) / scale;
  const angle = (Math.atan2(cy - edgeY, cx - edgeX) * 180) / Math.PI;
  const inX =
    above || below ? Math.min(box.x + box.width - 14, Math.max(box.x + 14, edgeX)) : edgeX;
  const arrow = `<path transform="translate(${px(inX)} ${px(edgeY)}) rotate(${px(angle)})" d="M-26 -3.5H-11V-9L0 0L-11 9V3.5H-26Z" fill="${strokeColour}" stroke="${shadeColour}" stroke-width="1.6"/>`;
  const rough = (mm: number) => roughText(mm, pith.seMm, units);
  const where = away < 2 ? 'at this edge' : `${rough(away)} this way`;
  const text = `pith ${where}, give or take ${rough(pith.seMm)}`;
  const sizePx = textPx;
  const width = textWidthPx(text, sizePx);
  const x = Math.min(box.x + box.width - width, Math.max(box.x, inX - width / 2));
  const y = above
    ? box.y - 7
    : below
      ? box.y + box.height + 10 + 1.4 * smallPx + sizePx
      : box.y + box.height / 2;
  const fill = paint(theme, 'fill', 'ink');
  if (above || below) {
    return joinPieces([{ svg: arrow, labels: [] }, textPiece({ x, y, text, sizePx, fill })]);
  }
  // Aside: the words stand on the wood, on a plate of their own.
  const plateX = pith.xMm < 0 ? box.x + 32 : box.x + box.width - 32 - width - 12;
  const plateY = Math.min(box.y + box.height - 2 * sizePx, Math.max(box.y + 4, edgeY - sizePx));
  const plate = `<rect x="${px(plateX)}" y="${px(plateY)}" width="${px(width + 12)}" height="${px(1.7 * sizePx)}" rx="3" ${paint(theme, 'fill', 'paper')} fill-opacity="0.9"/>`;
  return joinPieces([
    { svg: arrow + plate, labels: [] },
    textPiece({ x: plateX + 6, y: plateY + 1.2 * sizePx, text, sizePx, fill }),
  ]);
}
