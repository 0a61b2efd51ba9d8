import type { Mark } from '../sheet/mark.js';
import type { DrawingFrame } from './drawingFrame.js';

/** More than this many ticks are not counted at a glance; the number is written instead. */
const mostTicks = 6;

/** Ticks across the cut lines, as the maker draws them before cutting. */
export function witnessTicks({ layout, panel, pxPerMm, sizePx }: DrawingFrame): Mark[] {
  const reach = 0.55 * sizePx;
  const apart = 0.28 * sizePx;
  return layout.witnessMarks
    .filter(({ ticks }) => ticks <= mostTicks)
    .flatMap(({ cut, ticks, xMm, yMm }) => {
      const isRip = layout.cuts.find(({ n }) => n === cut)!.kind === 'rip';
      const x = panel.x + xMm * pxPerMm;
      const y = panel.y + yMm * pxPerMm;
      return Array.from({ length: ticks }, (_, index): Mark => {
        const along = (index - (ticks - 1) / 2) * apart;
        const line = { kind: 'line' as const, stroke: 0.35, strokePx: 0.9 };
        return isRip
          ? { ...line, x1: x + along, y1: y - reach, x2: x + along, y2: y + reach }
          : { ...line, x1: x - reach, y1: y + along, x2: x + reach, y2: y + along };
      });
    });
}
