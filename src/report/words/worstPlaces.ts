import type { SeamResult, SeamWindow } from '../../core/results/scoreResult.js';

/** One of the places where a seam is seen most. */
export interface WorstPlace {
  readonly window: SeamWindow;
  readonly v: number;
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * The peaks of a seam's visibility, the worst first.
 * @param seam the seam with its windows
 * @param most how many, default 1
 * @param leastV places below this V are not worth a walk round the panel, default 0
 * @param apart smallest distance between two peaks as a share of the seam's length, default 0.1
 */
export function worstPlaces(
  seam: SeamResult,
  { most = 1, leastV = 0, apart = 0.1 }: { most?: number; leastV?: number; apart?: number } = {},
): WorstPlace[] {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  if (!(lengthMm > 0)) return [];
  const told = seam.windows
    .filter((window) => window.v !== null && window.v >= leastV)
    .sort((a, b) => b.v! - a.v!);
  const chosen: SeamWindow[] = [];
  for (const window of told) {
    if (chosen.length === most) break;
    const clear = chosen.every((other) => Math.abs(other.atMm - window.atMm) >= apart * lengthMm);
    // A second place is only worth naming when it is nearly as bad as the first.
    if (clear && window.v! >= 0.7 * told[0]!.v!) chosen.push(window);
  }
  return chosen.map((window) => ({
    window,
    v: window.v!,
    xMm: x1Mm + ((x2Mm - x1Mm) * window.atMm) / lengthMm,
    yMm: y1Mm + ((y2Mm - y1Mm) * window.atMm) / lengthMm,
  }));
}
