/** A line that runs further than this along the joint while it crosses is not followed, mm/mm. */
const farthestWay = 70;
/** The lost width is tried this much either way, mm: dressing is never exact. */
const triedMm: readonly number[] = [-0.4, -0.2, 0, 0.2, 0.4];

/**
 * The grain lines at an edge carried on to the middle of a lost strip of width g, where those of
 * the other edge meet them: a line that leaves A's edge at xi arrives at xi + (g/2) cot theta_A.
 *
 * @param lines at the edge, one per mm. @param angleRad direction there. @param side -1 for A.
 * @returns for every width tried about g one row; NaN where no line can be followed.
 */
export function carriedLines(
  lines: Float64Array,
  angleRad: Float64Array,
  side: -1 | 1,
  lostMm: number,
): Float64Array[] {
  return triedMm.map((more) => {
    const halfMm = (side * Math.max(0, lostMm + more)) / 2;
    return angleRad.map((angle, i) => {
      const way = 1 / Math.tan(angle);
      return Math.abs(way) <= farthestWay ? at(lines, i + halfMm * way) : Number.NaN;
    });
  });
}

function at(values: Float64Array, x: number): number {
  const i = Math.floor(x);
  return values[i] + (x - i) * (values[i + 1] - values[i]);
}
