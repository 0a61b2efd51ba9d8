import type { LineMm } from '../../src/core/results/scoreResult.js';

/** A found line this far off is the seam in the wrong place, not a false seam, mm. */
const nearMm = 3;

export interface SeamMatch {
  /** Per true seam: found within 1 mm and 0.5 deg, over at least half of its length. */
  readonly found: readonly boolean[];
  /** Found lines that lie along no true seam (3 mm, 2 deg). */
  readonly falseSeams: number;
}

/** Compares found seams with the true ones; anywhere inside an open gap (a reveal) will do. */
export function matchSeams(
  truth: readonly { readonly line: LineMm; readonly gapMm: number }[],
  found: readonly LineMm[],
): SeamMatch {
  return {
    found: truth.map((seam) =>
      found.some((line) => fits(seam.line, line, 1 + seam.gapMm / 2, 0.5)),
    ),
    falseSeams: found.filter(
      (line) => !truth.some((seam) => fits(line, seam.line, nearMm + seam.gapMm / 2, 2)),
    ).length,
  };
}

/** Whether `other` runs along `line`: within limits at its middle, over half of its length. */
function fits(line: LineMm, other: LineMm, mostMm: number, mostDeg: number): boolean {
  const [ux, uy, length] = direction(other);
  const [vx, vy, own] = direction(line);
  const turn = Math.asin(Math.min(1, Math.abs(ux * vy - uy * vx)));
  const mx = (line.x1Mm + line.x2Mm) / 2 - other.x1Mm;
  const my = (line.y1Mm + line.y2Mm) / 2 - other.y1Mm;
  const from = (line.x1Mm - other.x1Mm) * ux + (line.y1Mm - other.y1Mm) * uy;
  const to = (line.x2Mm - other.x1Mm) * ux + (line.y2Mm - other.y1Mm) * uy;
  const shared = Math.min(length, Math.max(from, to)) - Math.max(0, Math.min(from, to));
  return (
    (turn * 180) / Math.PI <= mostDeg &&
    Math.abs(mx * uy - my * ux) <= mostMm &&
    shared >= Math.min(own, length) / 2
  );
}

function direction({ x1Mm, y1Mm, x2Mm, y2Mm }: LineMm): [number, number, number] {
  const length = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1;
  return [(x2Mm - x1Mm) / length, (y2Mm - y1Mm) / length, length];
}
