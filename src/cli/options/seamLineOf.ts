import type { LineMm } from '../../core/results/scoreResult.js';
import type { SeamSpec } from './parseSeam.js';

/** The placed seam as a line on this panel. */
export function seamLineOf(
  seam: SeamSpec,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): LineMm {
  switch (seam.kind) {
    case 'along':
      return { x1Mm: 0, y1Mm: seam.yMm, x2Mm: widthMm, y2Mm: seam.yMm };
    case 'across':
      return { x1Mm: seam.xMm, y1Mm: 0, x2Mm: seam.xMm, y2Mm: heightMm };
    case 'line':
      return seam.line;
  }
}
