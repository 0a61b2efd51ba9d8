import { defaultForecastOptions } from '../../dist/core/pipeline/forecastOptions.js';
import { imagineFace } from '../../dist/core/pipeline/imagineFace.js';
import { curveSummary } from '../../dist/core/rip/curveSummary.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { ripLossMm } from '../../dist/core/rip/frontCut.js';
import { ripCurve } from '../../dist/core/rip/ripCurve.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
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
