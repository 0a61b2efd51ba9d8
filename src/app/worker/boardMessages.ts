import type { ArrangeOptions } from '../../core/board/arrange/arrangeOptions.js';
import type { ArrangeRules } from '../../core/board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import type { BoardWay } from '../../core/board/arrange/boardWay.js';
import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import type { JobFailure } from '../../job/workerMessages.js';

/** Page to worker. */
export type BoardRequest =
  | {
      readonly kind: 'boards';
      readonly boards: readonly BoardPhotos[];
      readonly options: ArrangeOptions;
    }
  /** An order laid by hand, from the top down. */
  | {
      readonly kind: 'order';
      readonly ways: readonly LaidByHand[];
      readonly rules: ArrangeRules;
    }
  | { readonly kind: 'best'; readonly rules: ArrangeRules };

/** A board as it was laid, slid by millimetres instead of the table's steps. */
export type LaidByHand = Omit<BoardWay, 'shift'> & { readonly slideMm: number };

/** Worker to page. */
export type BoardReply =
  | { readonly kind: 'ready' }
  | { readonly kind: 'progress'; readonly fraction: number; readonly what: string }
  | { readonly kind: 'order'; readonly result: ArrangeResult }
  | { readonly kind: 'best'; readonly result: ArrangeResult }
  | { readonly kind: 'failed'; readonly error: JobFailure };
