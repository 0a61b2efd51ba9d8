import type { Mark } from './mark.js';

/** A part of a page, laid out from (0, 0); it takes the page's whole text width. */
export interface Block {
  readonly heightPx: number;
  readonly marks: readonly Mark[];
}
