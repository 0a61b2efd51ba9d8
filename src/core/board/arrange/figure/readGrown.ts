import type { BoardEdge } from '../boardEdges.js';
import { type JointTable, pairIndex } from '../jointTable.js';
import type { NumberedEdge } from '../numberedEdge.js';
import { figureLogRatio, figureModel } from './figureModel.js';
import { type FigureWindow, figureWindows } from './figureWindows.js';

/** Two edges of different boards and how their figure agrees, read from either side. */
interface ReadPair {
  readonly index: number;
  readonly windows: readonly [readonly FigureWindow[], readonly FigureWindow[]];
}

/**
 * How far the figure speaks for any two edges having been one board: the mean log ratio of both
 * readings, against a model learnt from these boards alone.
 */
export function readGrown(
  boardCount: number,
  edges: readonly NumberedEdge[],
): Pick<JointTable, 'grown' | 'ownGrown'> {
  const pairs = edges.flatMap((one, i) =>
    edges.slice(i + 1).flatMap((two): ReadPair[] => {
      if (one.board === two.board) return [];
      const index = pairIndex(boardCount, one.index, two.index);
      const there = windowsBetween(one.edge, two.edge);
      return [{ index, windows: [there, windowsBetween(two.edge, one.edge)] }];
    }),
  );
  const inside = edges.flatMap(({ edge }) => edge.inside);
  const grown = new Float64Array((4 * boardCount) ** 2).fill(Number.NaN);
  if (inside.length === 0) return { grown, ownGrown: Number.NaN };
  const model = figureModel(
    inside,
    pairs.flatMap(({ windows }) => windows),
  );
  for (const { index, windows } of pairs) {
    const [there, back] = windows.map((one) => figureLogRatio(model, one));
    grown[index] = (there + back) / 2;
  }
  return { grown, ownGrown: model.own };
}

function windowsBetween(above: BoardEdge, below: BoardEdge): FigureWindow[] {
  const slideMm = (below.lengthMm - above.lengthMm) / 2;
  return figureWindows(above.above.figure, below.below.figure, slideMm);
}
