import type { ColourShift } from './panelSpec.js';

/** One cut through a board, re-joined: where it lies in the finished panel and what it cost. */
export interface CutSpec {
  /** Place of the seam at the middle of the panel: y for a rip, x for a crosscut, mm. */
  readonly atMm: number;
  /** Width lost at the seam's middle (kerf plus dressing), default 0 mm. */
  readonly lostMm?: number;
  /** How far side A (above, left) has moved in +x (crosscut +y) against side B, default 0 mm. */
  readonly slideMm?: number;
  /** Extra loss per metre along the seam (uneven dressing), default 0 mm/m. */
  readonly wedgeMmPerM?: number;
  /** Seam turned from x (crosscut: from y), from +x towards +y, default 0 rad. */
  readonly tiltRad?: number;
  /** Side B and all beyond planed deeper than side A by this much, default 0 mm. */
  readonly depthStepMm?: number;
  /** Colour of side B against side A, default none. */
  readonly colourShift?: ColourShift;
  /** Glue line: width, default 0 mm (none), and contrast, default 0.3. */
  readonly glueWidthMm?: number;
  readonly glueContrast?: number;
}
