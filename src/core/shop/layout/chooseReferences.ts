import type { ExactLayout } from './exactLayout.js';
import type { LayoutInput } from './layoutInput.js';
import type { SawLimits } from './sawLimits.js';
import type { References } from './workSequence.js';

/**
 * Chooses the edge for the fence and the end for the stop.
 * What the maker asked for; else the upper edge and the left end, unless the piece that would run
 * between fence and blade there is too narrow and the other one is not.
 */
export function chooseReferences(
  layout: ExactLayout,
  input: LayoutInput,
  limits: SawLimits,
): References {
  const { courses, strips } = layout;
  const widthOf = (index: number) => {
    const { y } = courses.at(index)!;
    return y.to.sub(y.from).valueOf();
  };
  const endOf = (index: number) =>
    Math.min(
      ...strips.map(({ pieces }) => {
        const { x } = pieces.at(index)!;
        return x.to.sub(x.from).valueOf();
      }),
    );
  const isBetter = (first: number, last: number, least: number) => first < least && last > first;
  const lower = isBetter(widthOf(0), widthOf(-1), limits.leastRipWidthMm);
  const right = isBetter(endOf(0), endOf(-1), limits.leastCrosscutLengthMm);
  return {
    edge: input.referenceEdge ?? (lower ? 'lower edge' : 'upper edge'),
    end: input.referenceEnd ?? (right ? 'right end' : 'left end'),
  };
}
