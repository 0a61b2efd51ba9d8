import type { Cue, VisibilityResult, VisibilityWord } from './visibilityResult.js';

/** The rectified panel that everything else refers to. */
export interface PanelResult {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly pxPerMm: number;
}

/** A straight segment in the panel frame, millimetres. */
export interface LineMm {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
}

/** One stretch of a seam, about a degree of visual angle long. */
export interface SeamWindow {
  /** Distance along the seam from its (x1Mm, y1Mm) end. */
  readonly atMm: number;
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly offsetMm: number | null;
  readonly changeDeg: number | null;
}

/** One joint: where it is and what was measured there. Null = the photo cannot tell (see notes). */
export interface SeamResult {
  readonly id: string;
  readonly found: 'photo' | 'placed';
  readonly line: LineMm;
  /** Chance of such a break where there is no seam; null when placed. */
  readonly p: number | null;
  readonly visibility: VisibilityResult;
  /** A above / left, B below / right; angles in (-90, 90] from +x towards +y. */
  readonly grain: {
    readonly angleADeg: number | null;
    readonly angleBDeg: number | null;
    readonly changeDeg: number | null;
    readonly changeSeDeg: number | null;
  };
  /** Across the grain, wrapped to +-spacing/2. */
  readonly offset: {
    readonly mm: number | null;
    readonly seMm: number | null;
    readonly spacingMm: number | null;
  };
  /** Width lost (positive: wood is missing) and slide of side A in +x (crosscut: +y). */
  readonly lost: {
    readonly mm: number | null;
    readonly seMm: number | null;
    readonly slideMm: number | null;
    readonly slideSeMm: number | null;
    /**
     * How much more was lost at the line's second end (right, crosscut: bottom) than at its first;
     * absent in answers kept from before it was measured.
     */
    readonly wedgeMm?: number | null;
    readonly wedgeSeMm?: number | null;
    /** Pairs that fit the photo equally well, where loss and slide cannot be told apart. */
    readonly alternatives?: readonly { readonly mm: number; readonly slideMm: number }[];
  };
  readonly colourStep: { readonly deltaE00: number | null };
  readonly glueLine: { readonly widthMm: number | null; readonly contrast: number | null };
  readonly windows: readonly SeamWindow[];
  readonly notes: readonly string[];
}

/** The answer of `score`. */
export interface ScoreResult {
  readonly schema: 'seamgrain/score@1';
  readonly panel: PanelResult;
  readonly seams: readonly SeamResult[];
  /** Of the whole panel: its worst seam. */
  readonly visibility: { readonly v: number | null; readonly word: VisibilityWord | null };
  readonly notes: readonly string[];
}
