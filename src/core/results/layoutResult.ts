/** A piece's size on its face: length along the grain, width across it. */
export interface PieceSize {
  readonly name: string;
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** One pass over the saw. */
export interface LayoutCut {
  readonly n: number;
  readonly kind: 'rip' | 'crosscut';
  /** What lies on the saw. */
  readonly workpiece: string;
  /** The blank's edge on the fence, or its end at the stop. */
  readonly reference: string;
  /** Exact distance from the fence or stop to the side of the blade that `toBlade` names. */
  readonly fenceMm: number;
  readonly toBlade: 'near' | 'far';
  /** The piece whose full size the setting protects. */
  readonly keeps: string;
  /** The piece that the kerf is taken from, and why. */
  readonly waste: string;
  readonly note: string;
  /** `fenceMm` on the maker's rule: its text, and what the rounding adds to the kept piece. */
  readonly setting: { readonly text: string; readonly mm: number; readonly errorMm: number };
  /** The band that turns to dust, on the panel: y for a rip, x for a crosscut. */
  readonly band: { readonly fromMm: number; readonly toMm: number };
  /** The strip that a crosscut parts; null for a rip. */
  readonly strip: string | null;
  /** At the fence or stop, then beyond the blade, with the exact setting … */
  readonly makes: readonly [PieceSize, PieceSize];
  /** … and with the setting on the rule: what the tape must show. */
  readonly makesAsSet: readonly [PieceSize, PieceSize];
  readonly cautions: readonly string[];
}

/** One finished piece of the layout, and where it lay. */
export interface LayoutPiece extends PieceSize {
  readonly kind: 'rail' | 'end' | 'divider' | 'front' | 'cut-out';
  /** The strip that it is cut from; null for a rail. */
  readonly strip: string | null;
  /** Width after dressing. */
  readonly dressedWidthMm: number;
  /** Length and dressed width with the settings on the rule. */
  readonly asSet: { readonly lengthMm: number; readonly widthMm: number };
  /** Where it lay in the panel, as sawn. */
  readonly onPanel: { readonly xMm: number; readonly yMm: number };
  readonly mayDress: string;
  readonly mayNotDress: string;
}

/** The hole that a front sits in after glue-up. */
export interface LayoutOpening {
  readonly front: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** The finished front that was asked for. */
  readonly frontLengthMm: number;
  readonly frontWidthMm: number;
  /** Between front and opening, at fitting. */
  readonly gapMm: {
    readonly upper: number;
    readonly lower: number;
    readonly left: number;
    readonly right: number;
  };
}

/** One line of the work, sawing and all the rest. */
export interface LayoutStep {
  readonly kind:
    | 'prepare'
    | 'mark'
    | 'rip'
    | 'dress'
    | 'crosscut'
    | 'dryClamp'
    | 'glue'
    | 'flatten'
    | 'square'
    | 'fit';
  /** The cut's number where the step is a cut. */
  readonly cut: number | null;
  readonly title: string;
  readonly text: string;
  /** The same in a line or two, for paper. */
  readonly brief: string;
  readonly cautions: readonly string[];
}

/** Ticks drawn over a cut line before it is cut, so that both sides find each other again. */
export interface WitnessMark {
  readonly cut: number;
  readonly ticks: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Room for planing after glue-up. */
export interface PlaningBudget {
  readonly roughMm: number;
  readonly finishedMm: number;
  /** To lose in flattening, the same for panel and front. */
  readonly toLoseMm: number;
  readonly eachFaceMm: number;
  /** A step at a joint plus a bow of the glued panel must stay below this together. */
  readonly absorbsMm: number;
  readonly notes: readonly string[];
}

/** The finest mark that the maker can set: a rule's fraction, a digital scale, a metric rule. */
export type RuleStep =
  | { readonly style: 'fraction'; readonly denominator: number }
  | { readonly style: 'decimal'; readonly places: number }
  | { readonly style: 'metric'; readonly stepMm: number };

/** The answer of `layout`. Lengths along x (grain), widths along y. */
export interface LayoutResult {
  readonly schema: 'seamgrain/layout@1';
  readonly panel: { readonly lengthMm: number; readonly widthMm: number };
  readonly kerfMm: number;
  readonly dressMm: number;
  readonly trimMm: number;
  readonly trimEndsMm: number;
  /** The maker's rule that `setting`s are on. */
  readonly rule: RuleStep;
  readonly frontWood: 'same' | 'contrasting' | 'veneered';
  /** The least blank for what was asked. */
  readonly needs: { readonly widthMm: number; readonly lengthMm: number };
  /** Panel minus needs, and how it lies on the four sides. */
  readonly spare: {
    readonly widthMm: number;
    readonly lengthMm: number;
    readonly upperMm: number;
    readonly lowerMm: number;
    readonly leftMm: number;
    readonly rightMm: number;
  };
  readonly cuts: readonly LayoutCut[];
  readonly pieces: readonly LayoutPiece[];
  readonly openings: readonly LayoutOpening[];
  /** The face that was asked for. */
  readonly face: { readonly lengthMm: number; readonly widthMm: number } | null;
  /** The face as it comes out of the clamps. */
  readonly gluedFace: { readonly lengthMm: number; readonly widthMm: number };
  readonly steps: readonly LayoutStep[];
  readonly witnessMarks: readonly WitnessMark[];
  readonly planing: PlaningBudget | null;
  /** False when a piece is too short or narrow for the saw; then `problems` says which. */
  readonly safety: { readonly canBeCut: boolean; readonly problems: readonly string[] };
  readonly cautions: readonly string[];
  readonly notes: readonly string[];
}
