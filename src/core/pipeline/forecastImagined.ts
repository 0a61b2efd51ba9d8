import type { ForecastImagined } from '../results/forecastResult.js';
import { curveSummary } from '../rip/curveSummary.js';
import { forecastDepth } from '../rip/forecastDepth.js';
import { forecastLines } from '../rip/forecastLines.js';
import { ripLossMm } from '../rip/frontCut.js';
import { ripCurve } from '../rip/ripCurve.js';
import { panelPlanes } from '../seam/panelPlanes.js';
import type { ForecastOptions, ImaginedWood } from './forecastOptions.js';
import { imagineFace } from './imagineFace.js';

/** A face larger than this tells no more and takes longer, mm. */
const largest = { widthMm: 420, heightMm: 220 };

/**
 * The same forecast on a face drawn by the wood model: every rip, how they stand as a whole, and
 * what planing does there.
 */
export function forecastImagined(
  wood: ImaginedWood,
  panel: { readonly widthMm: number; readonly heightMm: number },
  options: ForecastOptions,
): ForecastImagined {
  const face = imagineFace(wood, {
    widthMm: Math.min(largest.widthMm, panel.widthMm),
    heightMm: Math.min(largest.heightMm, panel.heightMm),
  });
  const lines = forecastLines(panelPlanes(face), face, options.distanceMm);
  const lossMm = ripLossMm(options);
  const curve = ripCurve(lines, lossMm);
  const middle = face.heightMm / 2;
  const edge = { etaAMm: middle - lossMm / 2, etaBMm: middle + lossMm / 2 };
  const { ringAngleDeg, ringWidthMm, contrast } = wood;
  return {
    ringAngleDeg,
    cut: cutName(ringAngleDeg),
    ringWidthMm,
    contrast,
    summary: curveSummary(curve),
    curve,
    depth: forecastDepth(lines, [{ ...edge, fromMm: 0, toMm: face.widthMm }], {
      ...{ ringAngleDeg, ringWidthMm: null, fromModel: true },
    }),
  };
}

/** Class by ring angle: Architectural Woodwork Standards, 1st ed. 2009, App. B (30 and 60 degrees). */
export function cutName(ringAngleDeg: number): 'flatsawn' | 'rift' | 'quartered' {
  if (ringAngleDeg <= 30) return 'flatsawn';
  return ringAngleDeg < 60 ? 'rift' : 'quartered';
}
