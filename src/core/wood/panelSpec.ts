import type { LineMm } from '../results/scoreResult.js';
import type { BoardSpec } from './boardSpec.js';
import type { FaceName } from './facePlane.js';

/** From panel mm to face mm: u = a x + b y + c, v = d x + e y + f (a rotation, turn or mirror). */
export interface Placement {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** A change of colour of a whole piece, CIE L*a*b* units at the board's base colour. */
export interface ColourShift {
  readonly dL: number;
  readonly da: number;
  readonly db: number;
}

/** One piece of wood in the panel: a convex outline that shows part of a board's face. */
export interface PieceSpec {
  readonly name: string;
  /** Which of the panel's boards. */
  readonly board: number;
  readonly face?: FaceName;
  /** Planed deeper than the board's own face by this much, default 0 mm. */
  readonly depthMm?: number;
  /** Corners in panel mm, clockwise on the picture; may reach beyond the panel. */
  readonly outline: readonly (readonly [number, number])[];
  readonly placement: Placement;
  readonly colourShift?: ColourShift;
}

/** What is done at one seam, and what is true of it. Signs as in the contract. */
export interface SeamSpec {
  readonly id: string;
  readonly kind: 'rip' | 'crosscut';
  readonly line: LineMm;
  /** Indices of the pieces above / left (A) and below / right (B). */
  readonly pieceA: number;
  readonly pieceB: number;
  /** Width lost at the middle of the line, and slide of A in +x (crosscut +y); null between boards. */
  readonly lostMm: number | null;
  readonly slideMm: number | null;
  /** Loss gained per mm along the line, rad. */
  readonly wedgeRad: number;
  /** Glue line width, mm (0 none), and contrast: 0..1 darker, below 0 brighter. */
  readonly glueWidthMm: number;
  readonly glueContrast: number;
  /** Open gap (reveal about a front), mm. */
  readonly gapMm: number;
}

/** A panel: boards, the pieces cut from them, and the seams between pieces. */
export interface PanelSpec {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly boards: readonly BoardSpec[];
  readonly pieces: readonly PieceSpec[];
  readonly seams: readonly SeamSpec[];
}
