import type { BoardFace } from './boardPhotos.js';

/** How a board lies in the panel. */
export interface BoardWay {
  /** Which board, from 0 in the order given. */
  readonly board: number;
  /** The face that shows. */
  readonly face: BoardFace;
  /** Turned end for end: rotated by 180 degrees in its own plane relative to that face's photo. */
  readonly turned: boolean;
  /** Lengthwise shift from lying centred, in steps of the table's `stepMm`, towards +x. */
  readonly shift: number;
}

/** A long edge of a board as its photo has it. */
export type LongEdge = 'top' | 'bottom';

/** The edge of the photo that lies lowest (towards the board below) in this way. */
export const lowerEdge = (way: Pick<BoardWay, 'turned'>): LongEdge =>
  way.turned ? 'top' : 'bottom';

/** The edge of the photo that lies uppermost in this way. */
export const upperEdge = (way: Pick<BoardWay, 'turned'>): LongEdge =>
  way.turned ? 'bottom' : 'top';
