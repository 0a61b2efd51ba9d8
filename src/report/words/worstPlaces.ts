import type { SeamResult, SeamWindow } from '../../core/results/scoreResult.js';

/** One of the places where a seam is seen most. */
export interface WorstPlace {
  readonly window: SeamWindow;
  readonly v: number;
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * The peaks of a seam's visibility, the worst first. A second place is named only when it is
 * nearly as bad as the first (0.7) and the seam is quieter (0.8) somewhere between the two.
 * @param seam the seam with its windows
 * @param most how many, default 1
 * @param leastV places below this V are not worth a walk round the panel, default 0
 */
export function worstPlaces(
  seam: SeamResult,
  { most = 1, leastV = 0 }: { most?: number; leastV?: number } = {},
): WorstPlace[] {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  if (!(lengthMm > 0)) return [];
  const told = seam.windows
    .filter((window) => window.v !== null && window.v >= leastV)
    .sort((a, b) => b.v! - a.v!);
  const chosen: SeamWindow[] = [];
  for (const window of told) {
    if (chosen.length === most || window.v! < 0.7 * told[0]!.v!) break;
    if (chosen.every((other) => dipsBetween(seam, window, other))) chosen.push(window);
  }
  return chosen.map((window) => ({
    window,
    v: window.v!,
    xMm: x1Mm + ((x2Mm - x1Mm) * window.atMm) / lengthMm,
    yMm: y1Mm + ((y2Mm - y1Mm) * window.atMm) / lengthMm,
  }));
}

function dipsBetween({ windows }: SeamResult, a: SeamWindow, b: SeamWindow): boolean {
  const [fromMm, toMm] = a.atMm < b.atMm ? [a.atMm, b.atMm] : [b.atMm, a.atMm];
  const lower = 0.8 * Math.min(a.v!, b.v!);
  return windows.some(({ atMm, v }) => atMm > fromMm && atMm < toMm && v !== null && v < lower);
}
