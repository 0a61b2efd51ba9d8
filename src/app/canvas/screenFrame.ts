import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { scoreSizes } from '../../report/score/scoreSizes.js';
import type { Extent, ViewTransform } from '../geometry/viewTransform.js';

/** Where the panel lies on the screen, as the report's drawings want to know it. */
export function screenFrame(view: ViewTransform, panelMm: Extent, widthPx: number): ScoreFrame {
  return {
    ...scoreSizes(widthPx),
    widthPx,
    panel: {
      x: view.x,
      y: view.y,
      width: panelMm.width * view.pxPerMm,
      height: panelMm.height * view.pxPerMm,
    },
    scale: view.pxPerMm,
    rails: [],
  };
}
