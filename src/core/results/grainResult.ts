import type { FaceRings } from './faceRings.js';
import type { PanelResult } from './scoreResult.js';

/** The grain in one cell of the panel. */
export interface GrainCell {
  readonly xMm: number;
  readonly yMm: number;
  readonly angleDeg: number | null;
  readonly angleSeDeg: number | null;
  readonly coherence: number;
  readonly spacingMm: number | null;
}

/** The answer of `grain`. */
export interface GrainResult {
  readonly schema: 'seamgrain/grain@1';
  readonly panel: PanelResult;
  readonly cells: readonly GrainCell[];
  readonly notes: readonly string[];
  /** How the rings stand to the face; only where it was asked for. */
  readonly ringAngleFromFace?: FaceRings;
}
