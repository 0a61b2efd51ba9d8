import type { Board } from './board.js';
import type { FaceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';
import type { FibreFrame } from './fibreFrame.js';
import type { Placement } from './panelSpec.js';
import type { PieceCanvas } from './pieceCanvas.js';
import type { RingProfile } from './ringProfile.js';

/** All that is needed to paint one piece of wood. */
export interface PaintJob {
  readonly board: Board;
  readonly plane: FacePlane;
  readonly profile: RingProfile;
  readonly lattice: FaceLattice;
  /** Colour drift on the lattice's nodes, as density. */
  readonly drift: Float32Array;
  readonly frame: FibreFrame;
  readonly canvas: PieceCanvas;
  /** Canvas px to face mm. */
  readonly faceFromPx: Placement;
  /** Seed of the texture at this depth of the board. */
  readonly textureSeed: number;
}
