import type { LineMm } from '../results/scoreResult.js';
import type { ColourShift } from './panelSpec.js';

/** What is exactly true of one drawn seam. Signs and sides as in the contract. */
export interface SeamTruth {
  readonly id: string;
  readonly kind: 'rip' | 'crosscut';
  readonly line: LineMm;
  readonly sameBoard: boolean;
  /** Width lost at mid-line, mm; null when the two sides are different boards. */
  readonly lostMm: number | null;
  /** Slide of side A in +x (crosscut +y) against side B, mm; null between different boards. */
  readonly slideMm: number | null;
  /** Loss gained per mm along the line from its first end. */
  readonly wedgeRad: number;
  /** How much deeper side B is planed than side A, mm. */
  readonly depthStepMm: number;
  readonly glueWidthMm: number;
  readonly glueContrast: number;
  readonly gapMm: number;
  /** Mean colour of side B's board less side A's, L*a*b*, before light and camera. */
  readonly colourStep: ColourShift;
}

/** Everything that is true of a drawn panel; functions take panel mm. */
export interface PanelTruth {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly seams: readonly SeamTruth[];
  /** Ring-line direction from +x towards +y, rad, in (-pi/2, pi/2]; NaN where no wood shows. */
  grainAngleRad(xMm: number, yMm: number): number;
  /** Mean ring-line direction over a disc of the piece at its middle, same convention. */
  meanGrainAngleRad(xMm: number, yMm: number, overMm: number): number;
  /** Distance between ring lines on the face, mm; NaN where no wood shows. */
  ringSpacingMm(xMm: number, yMm: number): number;
  /** Fibre (pores, streaks) direction, same convention; it is not the ring line's. */
  fibreAngleRad(xMm: number, yMm: number): number;
  /** Which piece covers the point, -1 for none. */
  pieceAt(xMm: number, yMm: number): number;
  /**
   * Ring line of piece `piece` continued to the point, whether or not it covers it. `ring` counts
   * rings from the pith, with the part of the ring that lies below the point.
   */
  ringLineOfPiece(
    piece: number,
    xMm: number,
    yMm: number,
  ): {
    readonly angleRad: number;
    readonly spacingMm: number;
    readonly ageMm: number;
    readonly ring: number;
  };
}
