import {
  type CutLoss,
  type EndPieces,
  endSlides,
  type FrontPlace,
  ripLossMm,
} from '../../core/rip/frontCut.js';
import type { Extent } from './viewTransform.js';

/** A piece of the panel, where it lay and where it comes to lie, millimetres. */
export interface GluedPiece {
  readonly name: 'upper rail' | 'left end' | 'front' | 'right end' | 'lower rail';
  readonly fromX: number;
  readonly fromY: number;
  readonly width: number;
  readonly height: number;
  readonly toX: number;
  readonly toY: number;
}

/**
 * The pieces of a panel that a front was cut out of, laid together again: each rip has lost its
 * kerf and dressing, so the strip moves up by one loss and the lower rail by two; the end pieces
 * stay at their stations or close in by a kerf.
 */
export function gluedPieces(
  panelMm: Extent,
  front: FrontPlace,
  loss: CutLoss,
  ends: EndPieces,
): readonly GluedPiece[] {
  const lost = ripLossMm(loss);
  const slides = endSlides(ends, loss.kerfMm);
  const { xMm, yMm, widthMm, heightMm } = front;
  const stripY = yMm - lost;
  const endX = xMm + widthMm + loss.kerfMm;
  const lowerY = yMm + heightMm + lost;
  const strip = { fromY: yMm, height: heightMm, toY: stripY };
  const pieces: readonly GluedPiece[] = [
    {
      name: 'upper rail',
      fromX: 0,
      fromY: 0,
      width: panelMm.width,
      height: stripY,
      toX: 0,
      toY: 0,
    },
    { name: 'left end', fromX: 0, width: xMm - loss.kerfMm, toX: slides.left, ...strip },
    { name: 'front', fromX: xMm, width: widthMm, toX: xMm, ...strip },
    {
      ...{ name: 'right end', fromX: endX, width: panelMm.width - endX },
      ...{ toX: endX + slides.right, ...strip },
    },
    {
      ...{ name: 'lower rail', fromX: 0, fromY: lowerY, width: panelMm.width },
      ...{ height: panelMm.height - lowerY, toX: 0, toY: stripY + heightMm },
    },
  ];
  return pieces.filter(({ width, height }) => width > 0 && height > 0);
}
