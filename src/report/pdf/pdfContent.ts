import type { Mark, TextMark } from '../sheet/mark.js';
import { pdfTextRuns } from './pdfTextRuns.js';

/** Numbers in a content stream: three decimals, never in exponents. */
function n(value: number): string {
  const fixed = value.toFixed(3).replace(/\.?0+$/, '');
  return fixed === '-0' ? '0' : fixed;
}

/**
 * A page's marks as PDF operators (PDF 1.7, 8 and 9), in px with y down as on the page.
 * @param imageName name of a picture among the page's resources
 */
export function pdfContent(
  marks: readonly Mark[],
  heightPx: number,
  imageName: (base64: string) => string,
): string {
  const flip = `0.75 0 0 -0.75 0 ${n(0.75 * heightPx)} cm`;
  const body = marks.map((mark) => operatorsOf(mark, imageName)).join('\n');
  return `q\n${flip}\n${body}\nQ`;
}

function operatorsOf(mark: Mark, imageName: (base64: string) => string): string {
  switch (mark.kind) {
    case 'rect':
      return painted(`${n(mark.x)} ${n(mark.y)} ${n(mark.width)} ${n(mark.height)} re`, mark);
    case 'line': {
      const dash = mark.dashPx ? `[${n(mark.dashPx)}] 0 d ` : '';
      const path = `${n(mark.x1)} ${n(mark.y1)} m ${n(mark.x2)} ${n(mark.y2)} l`;
      return `q ${dash}${n(mark.stroke)} G ${n(mark.strokePx)} w ${path} S Q`;
    }
    case 'polygon': {
      const [first, ...rest] = mark.points.map(([x, y]) => `${n(x)} ${n(y)}`);
      return painted(`${first} m ${rest.map((point) => `${point} l`).join(' ')} h`, mark);
    }
    case 'circle':
      return painted(circlePath(mark.x, mark.y, mark.r), mark);
    case 'text':
      return textOperators(mark);
    case 'image': {
      const { x, y, width, height, picture } = mark;
      const place = `${n(width)} 0 0 ${n(-height)} ${n(x)} ${n(y + height)} cm`;
      return `q ${place} /${imageName(picture.base64)} Do Q`;
    }
  }
}

function painted(
  path: string,
  { fill, stroke, strokePx = 1 }: { fill?: number; stroke?: number; strokePx?: number },
): string {
  const inks = [
    ...(fill === undefined ? [] : [`${n(fill)} g`]),
    ...(stroke === undefined ? [] : [`${n(stroke)} G ${n(strokePx)} w`]),
  ];
  const paint = stroke === undefined ? 'f' : fill === undefined ? 'S' : 'B';
  return fill === undefined && stroke === undefined ? '' : `${inks.join(' ')} ${path} ${paint}`;
}

/** Four Bezier quarters; 0.5523 r brings them within 0.03 % of a circle. */
function circlePath(x: number, y: number, r: number): string {
  const k = 0.5523 * r;
  const quarter = (points: readonly number[]) => `${points.map(n).join(' ')} c`;
  return [
    `${n(x + r)} ${n(y)} m`,
    quarter([x + r, y + k, x + k, y + r, x, y + r]),
    quarter([x - k, y + r, x - r, y + k, x - r, y]),
    quarter([x - r, y - k, x - k, y - r, x, y - r]),
    quarter([x + k, y - r, x + r, y - k, x + r, y]),
  ].join(' ');
}

function textOperators({ x, y, text, sizePx, bold = false, anchor = 'start', fill = 0 }: TextMark) {
  const { runs, widthPx } = pdfTextRuns(text, sizePx, bold);
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - widthPx / 2 : x - widthPx;
  const shown = runs.map((run) => {
    const at = `1 0 0 -1 ${n(left + run.x)} ${n(y - run.risePx)} Tm`;
    const hex = run.codes.map((code) => code.toString(16).padStart(2, '0')).join('');
    return `/${bold ? 'F2' : 'F1'} ${n(run.sizePx)} Tf ${at} <${hex}> Tj`;
  });
  return `BT ${n(fill)} g ${shown.join(' ')} ET`;
}
