import type { Lab } from '../../colour/lab.js';
import type { Cue } from '../../results/visibilityResult.js';
import type { BoardFace } from './boardPhotos.js';
import { type BoardWay, type LongEdge, lowerEdge, upperEdge } from './boardWay.js';
import type { MatchLikeness } from './matchLikeness.js';

/** What a table of joints knows of each board. */
export interface TableBoard {
  /** Names of the photos of face A and B; B null where it was not photographed. */
  readonly photos: readonly [string, string | null];
  readonly isImagined: boolean;
  readonly lengthMm: number;
  /** Width once both edges are jointed, mm. */
  readonly widthMm: number;
  /** It may be shifted by up to this many steps either way. */
  readonly mostSteps: number;
}

/**
 * Every joint that the boards could make: any long edge of one board against any long edge of
 * another, at any lengthwise shift. It survives a structured clone, so orders are tried and
 * judged without looking at the photos again.
 */
export interface JointTable {
  readonly boards: readonly TableBoard[];
  readonly distanceMm: number;
  readonly jointMm: number;
  /** Length of the panel that the boards make, mm. */
  readonly panelLengthMm: number;
  readonly stepMm: number;
  /** Largest difference of two boards' shifts, in steps. */
  readonly mostApart: number;
  /** Indexed by `jointIndex`; NaN where the photo cannot tell. */
  readonly v: Float64Array;
  /** `tableCues` at this place less one; 0 for none. */
  readonly cue: Uint8Array;
  /**
   * Log of how much likelier the figure on both sides of a joint is if the boards were one there;
   * by `pairIndex`, no slide, NaN where not read.
   */
  readonly grown: Float64Array;
  /** Mean of the same along lines inside the boards; NaN where none could be read. */
  readonly ownGrown: number;
  /** Mean colour beside every long edge, by `edgeIndex`; null where there is none. */
  readonly edgeColour: readonly (Lab | null)[];
  /** How alike two faces are as a resawn pair would be. */
  readonly likeness: readonly MatchLikeness[];
  readonly notes: readonly string[];
}

export const tableCues: readonly Cue[] = ['break', 'direction', 'spacing', 'colour', 'glueLine'];

/** Number of one of the 4 long edges of a board's two faces. */
export const edgeIndex = (board: number, face: BoardFace, edge: LongEdge): number =>
  4 * board + (face === 'B' ? 2 : 0) + (edge === 'bottom' ? 1 : 0);

/** Place of two edges in a table with one entry a pair. */
export function pairIndex(boardCount: number, edgeOne: number, edgeTwo: number): number {
  const [low, high] = edgeOne < edgeTwo ? [edgeOne, edgeTwo] : [edgeTwo, edgeOne];
  return low * 4 * boardCount + high;
}

/** Place in the table of the joint of two edges, upper board's shift less lower board's in steps. */
export function jointIndex(
  table: Pick<JointTable, 'boards' | 'mostApart'>,
  edgeOne: number,
  edgeTwo: number,
  apart: number,
): number {
  // Turning a joint half round swaps its sides and leaves the difference of shifts as it is.
  const pair = pairIndex(table.boards.length, edgeOne, edgeTwo);
  return pair * (2 * table.mostApart + 1) + apart + table.mostApart;
}

/** The joint that two boards make, one lying above the other; v null where it cannot be told. */
export function jointBetween(
  table: JointTable,
  above: BoardWay,
  below: BoardWay,
): { readonly v: number | null; readonly cue: Cue | null } {
  const index = jointIndex(table, ...edgesBetween(above, below), above.shift - below.shift);
  const v = table.v[index];
  return { v: Number.isNaN(v) ? null : v, cue: tableCues[table.cue[index] - 1] ?? null };
}

/** The two edges that meet where one board lies above another. */
export function edgesBetween(above: BoardWay, below: BoardWay): [number, number] {
  return [
    edgeIndex(above.board, above.face, lowerEdge(above)),
    edgeIndex(below.board, below.face, upperEdge(below)),
  ];
}
