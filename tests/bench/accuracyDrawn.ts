import { createRandom } from '../../src/core/random/createRandom.js';
import type { BoardSpec } from '../../src/core/wood/boardSpec.js';
import { crosscutPanel } from '../../src/core/wood/crosscutPanel.js';
import { drawerFrontPanel } from '../../src/core/wood/drawerFrontPanel.js';
import { mixedBoardsPanel } from '../../src/core/wood/mixedBoardsPanel.js';
import { onePiecePanel } from '../../src/core/wood/onePiecePanel.js';
import type { PanelSpec } from '../../src/core/wood/panelSpec.js';
import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { benchBoards, benchHeightMm, benchWidthMm, twoCuts } from './accuracyPanels.js';

const size = { widthMm: benchWidthMm, heightMm: benchHeightMm };

/** A panel of the bench and what it is called. */
export interface NamedSpec {
  readonly name: string;
  readonly spec: PanelSpec;
}

const named = (kind: string, seed: number, spec: PanelSpec): NamedSpec => ({
  name: `${kind}, ${spec.boards[0].setting} ${spec.boards[0].cut}, seed ${seed}`,
  spec,
});

/** Uncut faces. */
export function seamlessSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board) =>
    named('seamless', board.seed, onePiecePanel({ board, ...size })),
  );
}

/** Cut in two places and put together with nothing lost. */
export function shamSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board) => {
    const cuts = twoCuts(board.seed, benchHeightMm, () => ({ lostMm: 0, slideMm: 0 }));
    return named('sham', board.seed, ripPanel({ board, ...size, cuts }));
  });
}

/** Two rips each: the 1/8 in kerf with dressing, and a small slide at times. */
export function ripSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board) => rippedTwice('rip', board));
}

function rippedTwice(kind: string, board: BoardSpec): NamedSpec {
  const cuts = twoCuts(board.seed, benchHeightMm, (random) => ({
    lostMm: 3.175 + random.uniform(0, 2),
    slideMm: random.next() < 0.5 ? 0 : random.uniform(-3, 3),
  }));
  return named(kind, board.seed, ripPanel({ board, ...size, cuts }));
}

/** Straight boards (rift and quartered) whose grain runs 5 to 10 deg off their edges. */
const slopedBoards = (firstSeed: number, rounds: number) =>
  benchBoards(firstSeed, rounds)
    .filter(({ cut }) => cut !== 'flatsawn')
    .map((board) => ({ ...board, slopeInFaceDeg: createRandom(board.seed).uniform(5, 10) }));

/** The same two rips, through grain that runs off the edge. */
export function slopedRipSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return slopedBoards(firstSeed, rounds).map((board) => rippedTwice('sloped rip', board));
}

/** Uncut faces whose grain runs off the edge. */
export function slopedSeamlessSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return slopedBoards(firstSeed, rounds).map((board) =>
    named('sloped seamless', board.seed, onePiecePanel({ board, ...size })),
  );
}

/** Two crosscuts each, put together a little out of line. */
export function crosscutSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board) => {
    const cuts = twoCuts(board.seed, benchWidthMm, (random) => ({
      lostMm: 3.175,
      slideMm: random.uniform(-2, 2),
    }));
    return named('crosscut', board.seed, crosscutPanel({ board, ...size, cuts }));
  });
}

/** Three boards of as many trees, edge to edge. */
export function mixedSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board) => {
    const boards = [58, 70, 72].map((heightMm, i) => ({
      board: { ...board, seed: 1000 * board.seed + i, widthMm: heightMm },
      heightMm,
    }));
    return named('mixed', board.seed, mixedBoardsPanel({ widthMm: benchWidthMm, boards }));
  });
}

/** A drawer front in its panel, with a reveal of 0.5 to 1 mm round it. */
export function frontSpecs(firstSeed: number, rounds: number): NamedSpec[] {
  return benchBoards(firstSeed, rounds).map((board, i) => {
    const random = createRandom(board.seed);
    const spec = drawerFrontPanel({
      board,
      lengthMm: benchWidthMm,
      widthMm: benchHeightMm,
      front: {
        xMm: random.uniform(80, 110),
        yMm: random.uniform(50, 65),
        widthMm: random.uniform(180, 220),
        heightMm: random.uniform(70, 90),
      },
      ends: i % 2 === 0 ? 'stay' : 'slideIn',
      revealMm: random.uniform(0.5, 1),
    });
    return named('drawer front', board.seed, spec);
  });
}
