import type { LayoutCut, LayoutPiece } from '../../core/results/layoutResult.js';
import type { Box } from '../draw/box.js';
import { boxInside } from '../draw/boxInside.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Mark, TextMark } from '../sheet/mark.js';
import { textBox } from '../sheet/textBox.js';
import type { DrawingFrame } from './drawingFrame.js';
import { kerfBoxes } from './kerfBoxes.js';
import { nearestFreeBox } from './nearestFreeBox.js';
import { spreadLabels } from './spreadLabels.js';

/** A label that wants to stand at its anchor. */
interface Wish {
  readonly anchor: readonly [x: number, y: number];
  /** Where it needs no line back. */
  readonly home: Box;
  readonly size: { readonly width: number; readonly height: number };
  readonly draw: (box: Box) => Mark[];
}

/**
 * Numbers of the cuts in circles, then the pieces' names, each where it belongs or nearest to it.
 * @returns `isComplete` false when some label found no room
 */
export function piecesAndNumbers(frame: DrawingFrame): {
  readonly marks: readonly Mark[];
  readonly isComplete: boolean;
} {
  const taken: Box[] = [];
  const area = labelArea(frame);
  const names = frame.layout.pieces.map((piece) => nameWish(frame, piece));
  const fits = ({ size, home }: Wish) => size.width <= home.width && size.height <= home.height;
  const rips = numberRips(frame, taken);
  const numbers = frame.layout.cuts
    .filter(({ kind }) => kind === 'crosscut')
    .map((cut) => place(numberWish(frame, cut), taken, area));
  // A number may stand on its kerf, words may not.
  taken.push(...kerfBoxes(frame));
  // What does not fit into its piece takes what room is left.
  const ordered = [...names.filter(fits), ...names.filter((wish) => !fits(wish))];
  const placed = [...numbers, ...ordered.map((wish) => place(wish, taken, area))];
  return {
    marks: [...rips, ...placed.flatMap((marks) => marks ?? [])],
    isComplete: placed.every((marks) => marks !== null),
  };
}

function numberWish({ layout, panel, pxPerMm, sizePx }: DrawingFrame, cut: LayoutCut): Wish {
  const strip = layout.pieces.find((piece) => piece.strip === cut.strip)!;
  const height = strip.widthMm * pxPerMm;
  const r = 0.95 * sizePx;
  const x = panel.x + ((cut.band.fromMm + cut.band.toMm) / 2) * pxPerMm;
  const top = panel.y + strip.onPanel.yMm * pxPerMm;
  return {
    anchor: [x, top + Math.min(height / 2, 1.2 * r)],
    home: { x: x - 1.2 * r, y: top - r, width: 2.4 * r, height: height + 2 * r },
    size: { width: 2 * r, height: 2 * r },
    draw: (box) => badge(cut.n, box.x + r, box.y + r, sizePx),
  };
}

function nameWish({ panel, pxPerMm, sizePx }: DrawingFrame, piece: LayoutPiece): Wish {
  const home = {
    x: panel.x + piece.onPanel.xMm * pxPerMm,
    y: panel.y + piece.onPanel.yMm * pxPerMm,
    width: piece.lengthMm * pxPerMm,
    height: piece.widthMm * pxPerMm,
  };
  const bold = piece.kind === 'front';
  const full = textWidthPx(piece.name, sizePx, bold);
  const nameSize = sizePx * Math.max(0.75, Math.min(1, (0.94 * home.width) / full));
  const at = (x: number, y: number): TextMark => ({
    kind: 'text',
    x,
    y: y + 0.33 * nameSize,
    text: piece.name,
    sizePx: nameSize,
    bold,
    anchor: 'middle',
  });
  const { width, height } = textBox(at(0, 0));
  return {
    anchor: [home.x + home.width / 2, home.y + home.height / 2],
    home,
    size: { width, height },
    draw: (box) => [at(box.x + width / 2, box.y + height / 2)],
  };
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
function place({ anchor, home, size, draw }: Wish, taken: Box[], area: Box): Mark[] | null {
  const box = nearestFreeBox(anchor, size, taken, area, 2);
  if (!box) return null;
  taken.push(box);
  if (boxInside(box, home)) return draw(box);
  // The line ends at the label's rim, so that it never runs through the words.
  const x = Math.min(Math.max(anchor[0], box.x), box.x + box.width);
  const y = Math.min(Math.max(anchor[1], box.y), box.y + box.height);
  return [leader(anchor[0], anchor[1], x, y), ...draw(box)];
}
