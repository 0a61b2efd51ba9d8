import type { LayoutCut } from '../../core/results/layoutResult.js';
import type { Mark } from './mark.js';

/**
 * Fence (or stop), wood and blade from above, with an arrow to the tooth that the number goes to.
 * Not to scale: it only shows near or far.
 * @param widthPx room
 * @param heightPx room
 */
export function bladeDiagram(cut: LayoutCut, x: number, widthPx: number, heightPx: number): Mark[] {
  const fence = 0.09 * widthPx;
  const blade = 0.1 * widthPx;
  const near = x + 0.6 * widthPx;
  const far = near + blade;
  const tip = cut.toBlade === 'near' ? near : far;
  const arrowY = 0.78 * heightPx;
  const head = 0.12 * heightPx;
  return [
    { kind: 'rect', x, y: 0, width: fence, height: heightPx, fill: 0.45 },
    {
      kind: 'rect',
      x: x + fence,
      y: 0.12 * heightPx,
      width: widthPx - fence,
      height: 0.42 * heightPx,
      fill: 0.9,
      stroke: 0.5,
      strokePx: 0.8,
    },
    { kind: 'rect', x: near, y: 0, width: blade, height: 0.66 * heightPx, fill: 0 },
    { kind: 'line', x1: x + fence, y1: arrowY, x2: tip, y2: arrowY, stroke: 0, strokePx: 1.4 },
    {
      kind: 'polygon',
      points: [
        [tip, arrowY],
        [tip - 1.6 * head, arrowY - head],
        [tip - 1.6 * head, arrowY + head],
      ],
      fill: 0,
    },
    {
      kind: 'line',
      x1: tip,
      y1: 0.6 * heightPx,
      x2: tip,
      y2: arrowY + 1.5 * head,
      stroke: 0,
      strokePx: 1,
    },
  ];
}
