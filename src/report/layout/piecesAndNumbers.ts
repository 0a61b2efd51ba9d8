import type { Box } from '../draw/box.js';
import { boxInside } from '../draw/boxInside.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Mark, TextMark } from '../sheet/mark.js';
import { textBox } from '../sheet/textBox.js';
import type { DrawingFrame } from './drawingFrame.js';
import { nearestFreeBox } from './nearestFreeBox.js';
import { spreadLabels } from './spreadLabels.js';

/** Numbers of the cuts in circles, then the pieces' names, each where it belongs or nearest to it. */
export function piecesAndNumbers(frame: DrawingFrame): Mark[] {
  const taken: Box[] = [];
  const ripNumbers = numberRips(frame, taken);
  const area = labelArea(frame);
  const crosscutNumbers = frame.layout.cuts
    .filter(({ kind }) => kind === 'crosscut')
    .flatMap((cut) => {
      const { panel, pxPerMm, sizePx } = frame;
      const strip = frame.layout.pieces.find((piece) => piece.strip === cut.strip)!;
      const height = strip.widthMm * pxPerMm;
      const r = 0.95 * sizePx;
      const x = panel.x + ((cut.band.fromMm + cut.band.toMm) / 2) * pxPerMm;
      const top = panel.y + strip.onPanel.yMm * pxPerMm;
      const anchor = [x, top + Math.min(height / 2, 1.2 * r)] as const;
      const home = { x: x - 1.2 * r, y: top - r, width: 2.4 * r, height: height + 2 * r };
      return placed(anchor, home, { width: 2 * r, height: 2 * r }, taken, area, (box) =>
        badge(cut.n, box.x + r, box.y + r, sizePx),
      );
    });
  const names = [...frame.layout.pieces]
    // Large pieces can give way least visibly, so the small ones choose first.
    .sort((a, b) => a.lengthMm * a.widthMm - b.lengthMm * b.widthMm)
    .flatMap((piece) => {
      const { panel, pxPerMm, sizePx } = frame;
      const x = panel.x + (piece.onPanel.xMm + piece.lengthMm / 2) * pxPerMm;
      const y = panel.y + (piece.onPanel.yMm + piece.widthMm / 2) * pxPerMm;
      const isFront = piece.kind === 'front';
      const room = 0.94 * piece.lengthMm * pxPerMm;
      const full = textWidthPx(piece.name, sizePx, isFront);
      const nameSize = sizePx * Math.max(0.75, Math.min(1, room / full));
      const at = (cx: number, cy: number): TextMark => ({
        kind: 'text',
        x: cx,
        y: cy + 0.33 * nameSize,
        text: piece.name,
        sizePx: nameSize,
        bold: isFront,
        anchor: 'middle',
      });
      const { width, height } = textBox(at(0, 0));
      const home = {
        x: panel.x + piece.onPanel.xMm * pxPerMm,
        y: panel.y + piece.onPanel.yMm * pxPerMm,
        width: piece.lengthMm * pxPerMm,
        height: piece.widthMm * pxPerMm,
      };
      return placed([x, y], home, { width, height }, taken, area, (box) => [
        at(box.x + width / 2, box.y + height / 2),
      ]);
    });
  return [...ripNumbers, ...crosscutNumbers, ...names];
}

/** The panel and the band left of it: right and below stand the dimensions. */
function labelArea({ bounds, panel, padPx }: DrawingFrame): Box {
  const width = panel.x + panel.width - bounds.x;
  return { x: bounds.x, y: panel.y - padPx, width, height: panel.height + 2 * padPx };
}

function numberRips({ layout, panel, padPx, pxPerMm, sizePx }: DrawingFrame, taken: Box[]): Mark[] {
  const rips = layout.cuts
    .filter(({ kind }) => kind === 'rip')
    .map(({ n, band }) => ({ n, y: panel.y + ((band.fromMm + band.toMm) / 2) * pxPerMm }))
    .sort((a, b) => a.y - b.y);
  const r = 0.95 * sizePx;
  const x = panel.x - 1.9 * sizePx;
  const rows = spreadLabels(
    rips.map(({ y }) => y),
    rips.map(() => 2 * r + 2),
    panel.y - padPx,
    panel.y + panel.height + padPx,
  );
  return rips.flatMap(({ n, y }, index) => {
    const row = rows?.[index] ?? y;
    taken.push({ x: x - r, y: row - r, width: 2 * r, height: 2 * r });
    return [leader(x + r, row, panel.x, y), ...badge(n, x, row, sizePx)];
  });
}

function badge(n: number, x: number, y: number, sizePx: number): Mark[] {
  const size = n > 9 ? 0.95 * sizePx : 1.1 * sizePx;
  return [
    { kind: 'circle', x, y, r: 0.95 * sizePx, fill: 0 },
    {
      kind: 'text',
      x,
      y: y + 0.36 * size,
      text: String(n),
      sizePx: size,
      bold: true,
      anchor: 'middle',
      fill: 1,
    },
  ];
}

function leader(x1: number, y1: number, x2: number, y2: number): Mark {
  return { kind: 'line', x1, y1, x2, y2, stroke: 0.3, strokePx: 0.8 };
}

/** Puts a label at its anchor or nearest to it; outside its home, with a line back. */
function placed(
  anchor: readonly [number, number],
  home: Box,
  size: { readonly width: number; readonly height: number },
  taken: Box[],
  area: Box,
  draw: (box: Box) => Mark[],
): Mark[] {
  const box = nearestFreeBox(anchor, size, taken, area, 2);
  if (!box) return [];
  taken.push(box);
  if (boxInside(box, home)) return draw(box);
  // The line ends at the label's rim, so that it never runs through the words.
  const x = Math.min(Math.max(anchor[0], box.x), box.x + box.width);
  const y = Math.min(Math.max(anchor[1], box.y), box.y + box.height);
  return [leader(anchor[0], anchor[1], x, y), ...draw(box)];
}
