import type { SeamResult } from '../../core/results/scoreResult.js';

/** A seam with its place among the others: what a maker would call it. */
export interface PlacedSeam {
  readonly seam: SeamResult;
  /** Counted down the panel, then across it, from 1: the number on the picture. */
  readonly number: number;
  readonly runs: 'along' | 'across';
  /** A joint runs with the grain, a crosscut across it, whichever way the panel lies. */
  readonly noun: 'joint' | 'crosscut';
  /** Seams that share a line (left and right of an opening) share a row. */
  readonly row: number;
  /** `upper`, `left`, `third`; empty when there is only one. */
  readonly adjective: string;
  /** `upper joint`, `left crosscut`, `third joint from the top`. */
  readonly name: string;
}
