import { defaultForecastOptions } from '../../dist/core/pipeline/forecastOptions.js';
import { imaginedBoard, imagineFace } from '../../dist/core/pipeline/imagineFace.js';
import { curveSummary } from '../../dist/core/rip/curveSummary.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { ripLossMm } from '../../dist/core/rip/frontCut.js';
import { ripCurve } from '../../dist/core/rip/ripCurve.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { drawPanel } from '../../dist/core/wood/drawPanel.js';
import { onePiecePanel } from '../../dist/core/wood/onePiecePanel.js';
import { median } from './forecastStatistics.js';

/** Rips of one cut over several boards of each kind of wood. */
export interface CutFacts {
  readonly ringAngleDeg: number;
  readonly setting: string;
  /** Medians over the boards. */
  readonly vMedian: number;
  readonly unseen: number;
  readonly worst: number;
}

/** Quartered softwood whose even lines run at a slope to the rip. */
export interface SlopeFacts {
  readonly slopeDeg: number;
  readonly v: number;
  readonly vByAngle: number;
}

/** What the slope of quartered lines against the rip alone does: no waves, no taper. */
export function forecastSlopes(seed: number): SlopeFacts[] {
  const size = { widthMm: 300, heightMm: 130 };
  const lossMm = ripLossMm(defaultForecastOptions);
  const wood = {
    ringAngleDeg: 85,
    ringWidthMm: 2,
    contrast: 1,
    setting: 'softwood',
    seed,
  } as const;
  return [0.5, 1, 2, 4].map((slopeDeg) => {
    const straight = { waviness: 0, taperMmPerM: 0, slopeInDepthDeg: 0, slopeInFaceDeg: slopeDeg };
    const board = { ...imaginedBoard(wood, size), ...straight };
    const { image } = drawPanel(onePiecePanel({ board, ...size }), { pxPerMm: 5 });
    const face = { image, pxPerMm: 5, ...size, notes: [] };
    const curve = ripCurve(forecastLines(panelPlanes(face), face, 600), lossMm);
    return {
      slopeDeg,
      v: median(curve.map(({ v }) => v ?? 0)),
      vByAngle: median(curve.map(({ vByAngle }) => vByAngle ?? 0)),
    };
  });
}

const settings = ['ring-porous', 'diffuse-porous', 'softwood'] as const;

/** Flatsawn, rift and quartered faces side by side: what rips show there. */
export function forecastFacts(boards: number, firstSeed: number): CutFacts[] {
  const lossMm = ripLossMm(defaultForecastOptions);
  return settings.flatMap((setting) =>
    [5, 45, 85].map((ringAngleDeg) => {
      const told = Array.from({ length: boards }, (_, b) => {
        const wood = { ringAngleDeg, ringWidthMm: 2, contrast: 1, setting, seed: firstSeed + b };
        const face = imagineFace(wood, { widthMm: 300, heightMm: 130 });
        const curve = ripCurve(forecastLines(panelPlanes(face), face, 600), lossMm);
        return {
          vMedian: curveSummary(curve).vMedian ?? 0,
          // 'Seen' begins at V = 1.
          unseen: curve.filter(({ v }) => (v ?? 0) < 1).length / curve.length,
          worst: Math.max(...curve.map(({ v }) => v ?? 0)),
        };
      });
      const middle = (pick: (one: (typeof told)[number]) => number) => median(told.map(pick));
      process.stderr.write(`facts ${setting} ${ringAngleDeg}\r`);
      return {
        ...{ ringAngleDeg, setting, vMedian: middle((t) => t.vMedian) },
        ...{ unseen: middle((t) => t.unseen), worst: middle((t) => t.worst) },
      };
    }),
  );
}
