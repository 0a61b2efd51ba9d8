import type { PhotoScale } from '../../core/image/photoScale.js';
import type { LineMm } from '../../core/results/scoreResult.js';

/** A seam that the maker put there, in panel millimetres. */
export interface PlacedSeam {
  readonly id: string;
  readonly line: LineMm;
}

/** A patch to leave out of every measurement: an ellipse in panel millimetres. */
export interface LeftOut {
  readonly id: string;
  readonly kind: 'knot' | 'glare';
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusXMm: number;
  readonly radiusYMm: number;
}

/** Upper left corner of the front on the panel, millimetres. */
export interface FrontPlace {
  readonly xMm: number;
  readonly yMm: number;
}

/** One photograph in the project and everything said about it by hand. */
export interface Photo {
  readonly id: string;
  readonly name: string;
  /** Key of the photo's bytes in the picture store; the bytes never enter the state. */
  readonly imageId: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly scale: PhotoScale | null;
  readonly findSeams: boolean;
  readonly seams: readonly PlacedSeam[];
  /** Seams found in the photo that the maker took away. */
  readonly droppedSeams: readonly LineMm[];
  readonly leftOut: readonly LeftOut[];
  readonly frontPlace: FrontPlace | null;
  /** Turned by 180 degrees in its own plane, when it lies among boards. */
  readonly turned: boolean;
  /** Lengthwise shift from lying centred among the boards, towards the right. */
  readonly slideMm: number;
  /** Where it must lie among the boards; null anywhere. */
  readonly boardPlace: 'top' | 'bottom' | null;
  /** The photo of the same board's first face, when this one shows its other face. */
  readonly backOf: string | null;
  /** The board lies with its other face up. */
  readonly backUp: boolean;
  /** Which of the board's faces looked to the heart of the tree: A is this photo's; null unknown. */
  readonly heartFace: 'A' | 'B' | null;
  /** Along the board as photographed: the way a plane cuts without tearing out; null unknown. */
  readonly planes: 'left' | 'right' | null;
  /** Lines laid along rings by hand, when the photo shows a board's end. */
  readonly ringTangents: readonly LineMm[];
  /** The photo of this board's end; null: none. */
  readonly endId: string | null;
  /** Which end that is, the photographed face up. */
  readonly endSide: 'left' | 'right';
}

/** A board that is not there, drawn by the wood model to stand among the candidates. */
export interface ImaginedBoard {
  readonly id: string;
  readonly cut: 'flatsawn' | 'rift' | 'quartered';
  readonly ringWidthMm: number;
  /** Strength of its ring lines, 1 as that wood usually has them. */
  readonly contrast: number;
  readonly wood: 'ring-porous' | 'diffuse-porous' | 'softwood';
  readonly seed: number;
  /** Along the grain, and across it. */
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Two boards that are to lie side by side, by their photos; resawn from one, as a match. */
export interface BoardPair {
  readonly ids: readonly [string, string];
  readonly kind: 'beside' | 'book' | 'slip';
}

/** How lengths are shown and read. */
export type LengthUnit = 'inch' | 'millimetre';

/** Numbers that hold for the whole project. */
export interface Settings {
  readonly unit: LengthUnit;
  readonly distanceMm: number;
  readonly kerfMm: number;
  readonly dressMm: number;
  readonly trimMm: number;
  readonly jointMm: number;
  /** Length that every board has to spare for sliding. */
  readonly boardSpareMm: number;
  /** Boards of one face lie as they grew, or all where their joints show least. */
  readonly layBoards: 'asGrown' | 'leastSeen';
  /** Heart sides show, or heart and bark sides by turns. */
  readonly heartSides: 'free' | 'up' | 'alternating';
  /** All boards plane the same way. */
  readonly planeOneWay: boolean;
  /** What candidates are ranked for: a rip anywhere, or the front where it is best taken from. */
  readonly candidatesFor: 'rip' | 'front';
  /** The front along the grain, and across it. */
  readonly frontWidthMm: number;
  readonly frontHeightMm: number;
  /** Marks per inch of the rule on the fence. */
  readonly ruleMarks: 16 | 32 | 64;
  readonly frontWood: 'same' | 'contrasting' | 'veneered';
  /** End pieces stay where they were, or slide in to close the kerf. */
  readonly endPieces: 'stay' | 'slide';
  /** Thickness of the blank and of the finished work; null where it plays no part. */
  readonly roughMm: number | null;
  readonly finishedMm: number | null;
  readonly paper: 'A4' | 'Letter';
}

/** What the tape says of one piece after ripping and dressing. */
export interface MeasuredSize {
  readonly piece: string;
  readonly widthMm: number | null;
  readonly lengthMm: number | null;
}

/** What the gap page is asked. */
export interface GapQuestion {
  readonly species: string;
  readonly ringAngle: 'flatsawn' | 'rift' | 'quartered';
  /** Climates as typed: `35% at 70F`. */
  readonly shop: string;
  readonly home: string;
  readonly surround: 'framed' | 'solid';
  /** Gap that must remain when the front is widest. */
  readonly revealMm: number;
  readonly place: 'top' | 'bottom' | 'split';
}

/** Everything that is kept, undone and exported. */
export interface Project {
  readonly id: string;
  readonly name: string;
  readonly createdAt: string;
  readonly settings: Settings;
  readonly photos: readonly Photo[];
  readonly boardPairs: readonly BoardPair[];
  readonly imaginedBoards: readonly ImaginedBoard[];
  readonly shownPhotoId: string | null;
  readonly gap: GapQuestion;
  /** Pieces as they were really cut. */
  readonly measures: readonly MeasuredSize[];
}
