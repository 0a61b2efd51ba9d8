import type { Box } from './box.js';

/** A part of a picture: its SVG and where its words stand (the tests hold those apart). */
export interface Piece {
  readonly svg: string;
  readonly labels: readonly Label[];
}

/** Words on the page. */
export interface Label extends Box {
  readonly text: string;
}
