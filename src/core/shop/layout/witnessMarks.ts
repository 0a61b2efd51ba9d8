import type { WitnessMark } from '../../results/layoutResult.js';
import type { ExactLayout } from './exactLayout.js';
import type { NumberedCut } from './numberCuts.js';

/**
 * Places the witness marks: over each rip one set of ticks in every piece that will be glued
 * there, over each crosscut one in the middle of the strip. Cut n gets n ticks.
 */
export function witnessMarks(layout: ExactLayout, cuts: readonly NumberedCut[]): WitnessMark[] {
  return cuts.flatMap((cut) => {
    const at = (cut.band.from.valueOf() + cut.band.to.valueOf()) / 2;
    if (cut.strip) {
      const { from, to } = cut.strip.y;
      return [
        {
          cut: cut.n,
          ticks: cut.n,
          xMm: at,
          yMm: from.valueOf() + 0.7 * (to.valueOf() - from.valueOf()),
        },
      ];
    }
    const neighbours = layout.strips.filter(
      ({ y }) => y.from.equals(cut.band.to) || y.to.equals(cut.band.from),
    );
    return neighbours.flatMap(({ pieces }) =>
      pieces
        .filter(({ kind }) => kind === 'end' || kind === 'divider')
        .map(({ x }) => ({
          cut: cut.n,
          ticks: cut.n,
          xMm: (x.from.valueOf() + x.to.valueOf()) / 2,
          yMm: at,
        })),
    );
  });
}
