import type { Mark } from '../sheet/mark.js';
import type { DrawingFrame } from './drawingFrame.js';
import { kerfBoxes } from './kerfBoxes.js';

/** The panel, its kerfs as black bands to scale, the fronts tinted, the triangle, the references. */
export function panelShapes(frame: DrawingFrame): Mark[] {
  const { layout, panel, pxPerMm } = frame;
  const marks: Mark[] = [
    { kind: 'rect', ...panel, fill: 1, stroke: 0, strokePx: 1.2 },
    ...layout.pieces
      .filter(({ kind }) => kind === 'front' || kind === 'cut-out')
      .map(({ onPanel, lengthMm, widthMm, kind }): Mark => {
        return {
          kind: 'rect',
          x: panel.x + onPanel.xMm * pxPerMm,
          y: panel.y + onPanel.yMm * pxPerMm,
          width: lengthMm * pxPerMm,
          height: widthMm * pxPerMm,
          fill: kind === 'front' ? 0.88 : 0.96,
        };
      }),
    triangle(panel),
  ];
  marks.push(...kerfBoxes(frame).map((box): Mark => ({ kind: 'rect', ...box, fill: 0 })));
  return [
    ...marks,
    ...references(
      layout.cuts.map(({ reference }) => reference),
      panel,
    ),
  ];
}

/** The maker's triangle over the whole face, point up. */
function triangle({ x, y, width, height }: DrawingFrame['panel']): Mark {
  const inset = 0.06;
  return {
    kind: 'polygon',
    points: [
      [x + width / 2, y + inset * height],
      [x + (1 - inset) * width, y + (1 - inset) * height],
      [x + inset * width, y + (1 - inset) * height],
    ],
    stroke: 0.78,
    strokePx: 1,
  };
}

/** The reference edge and end as heavy lines. */
function references(names: readonly string[], panel: DrawingFrame['panel']): Mark[] {
  const { x, y, width, height } = panel;
  return [...new Set(names)].map((name): Mark => {
    const stroke = { kind: 'line' as const, stroke: 0, strokePx: 4 };
    if (name === 'upper edge') return { ...stroke, x1: x - 2, y1: y - 2, x2: x + width, y2: y - 2 };
    if (name === 'lower edge') {
      return { ...stroke, x1: x - 2, y1: y + height + 2, x2: x + width, y2: y + height + 2 };
    }
    const at = name === 'left end' ? x - 2 : x + width + 2;
    return { ...stroke, x1: at, y1: y - 4, x2: at, y2: y + height };
  });
}
