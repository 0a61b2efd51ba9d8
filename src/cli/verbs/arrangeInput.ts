import {
  type ArrangeOptions,
  defaultArrangeOptions,
} from '../../core/board/arrange/arrangeOptions.js';
import type {
  ArrangeRules,
  MatchedPair,
  PlaningDirection,
} from '../../core/board/arrange/arrangeRules.js';
import type { BoardFace, BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import { imaginedMate } from '../../core/board/arrange/imaginedMate.js';
import { SeamgrainError } from '../../core/errors.js';
import type { PhotoOptions } from '../options/photoScaleOf.js';

/** The flags of `arrange`, read; boards counted from 0. */
export interface ArrangeFlags extends PhotoOptions {
  readonly joint?: number;
  readonly kerf?: number;
  readonly spare?: number;
  readonly distance?: number;
  readonly colour: boolean;
  readonly lay?: 'as-grown' | 'least-seen';
  readonly top?: number;
  readonly bottom?: number;
  readonly together?: readonly (readonly [number, number])[];
  readonly heart?: 'up' | 'alternating';
  readonly heartFaces?: readonly (BoardFace | null)[];
  readonly oneWay?: true;
  readonly planes?: readonly (PlaningDirection | null)[];
  readonly bookMatch?: readonly (readonly number[])[];
  readonly slipMatch?: readonly (readonly number[])[];
  readonly out?: string;
  readonly json?: true;
  readonly units: 'in' | 'mm';
  readonly rule: '16' | '32' | '64';
}

/** What the job `arrange` is asked. */
export interface ArrangeInput {
  readonly boards: readonly BoardPhotos[];
  readonly options: ArrangeOptions;
  readonly rules: ArrangeRules;
}

/**
 * What the flags ask. A board that is matched alone gets the mate that resawing would give, as a
 * further board.
 */
export function arrangeInput(
  flags: ArrangeFlags,
  photographed: readonly BoardPhotos[],
): ArrangeInput {
  checkLists(flags, photographed.length);
  const boards = [...photographed];
  const heartFaces = [...(flags.heartFaces ?? [])];
  const pairOf = (kind: 'book' | 'slip', [p, q]: readonly number[]): MatchedPair => {
    const board = photographed[p];
    if (q !== undefined) return { kind, boards: [p, q] };
    if (!board) throw noBoard(p, photographed.length);
    boards.push(imaginedMate(board, kind));
    return { kind, boards: [p, boards.length - 1] };
  };
  const matched = [
    ...(flags.bookMatch ?? []).map((pair) => pairOf('book', pair)),
    ...(flags.slipMatch ?? []).map((pair) => pairOf('slip', pair)),
  ];
  return {
    boards,
    options: {
      ...defaultArrangeOptions,
      distanceMm: flags.distance ?? defaultArrangeOptions.distanceMm,
      jointMm: flags.joint ?? 0,
      kerfMm: flags.kerf ?? 0,
      spareMm: flags.spare ?? 0,
      useColour: flags.colour,
    },
    rules: {
      top: flags.top ?? null,
      bottom: flags.bottom ?? null,
      together: flags.together ?? [],
      heart: flags.heart ?? 'free',
      heartFaces,
      planing: flags.oneWay ? 'oneWay' : 'free',
      planingDirections: flags.planes ?? [],
      asGrown: flags.lay !== 'least-seen',
      matched,
    },
  };
}

function checkLists({ heart, heartFaces, oneWay, planes }: ArrangeFlags, count: number): void {
  const lists = { '--heart-faces': heartFaces, '--planes': planes };
  for (const [option, list] of Object.entries(lists)) {
    if (!list || list.length === count) continue;
    throw new SeamgrainError(
      'wrongUsage',
      `${option} names ${list.length} of ${count} boards.`,
      'Give one for each board in the order of the photos, ? where you do not know.',
    );
  }
  if (heart && !heartFaces) throw missing('--heart', '--heart-faces A,B,?');
  if (oneWay && !planes) throw missing('--one-way', '--planes left,right,?');
}

const missing = (option: string, other: string) =>
  new SeamgrainError(
    'wrongUsage',
    `${option} needs to know the boards; a photo of the face cannot tell.`,
    `Add ${other}, one for each board.`,
  );

const noBoard = (board: number, count: number) =>
  new SeamgrainError(
    'wrongUsage',
    `There is no board ${board + 1}.`,
    `Boards are numbered 1 to ${count} in the order of their photos.`,
  );
