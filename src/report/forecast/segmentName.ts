import type { ForecastWorst } from '../../core/results/forecastResult.js';

/** What a maker calls a joint or a side of the reveal: `left end piece's upper joint`, `front's upper edge`. */
export function segmentName({ piece, edge }: Pick<ForecastWorst, 'piece' | 'edge'>): string {
  return piece === 'front' ? `front’s ${edge} edge` : `${piece} piece’s ${edge} joint`;
}
