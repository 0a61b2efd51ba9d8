import { grainPanel } from '../../src/core/pipeline/grainPanel.js';
import type { WoodCut, WoodSetting } from '../../src/core/wood/woodSetting.js';
import { bootstrap, type Interval, mean, percent, rms } from './accuracyIntervals.js';
import { type BenchPanel, cuts, settings } from './accuracyPanels.js';
import { type AccuracyRow, accuracyRow, type Target } from './accuracyRow.js';

interface CellError {
  /** Measured less true ring line, deg; NaN where nothing is told. */
  readonly errorDeg: number;
  readonly seDeg: number;
}

const section = 'Grain angle';
/** Share of cells that claim 1 deg or better, and RMSE among them, as asked per cut. */
const asked = {
  flatsawn: { share: 50, rmse: 1.5 },
  rift: { share: 90, rmse: 0.4 },
  quartered: { share: 90, rmse: 0.4 },
};

/** A seamless face's cells. */
export interface FaceErrors {
  readonly cut: WoodCut;
  readonly setting: WoodSetting;
  readonly cells: readonly CellError[];
}

/** Grain angle of seamless faces against the model's own ring line, per cut and setting. */
export function accuracyCellRows(faces: readonly FaceErrors[]): AccuracyRow[] {
  return cuts.flatMap((cut) => {
    const { share, rmse } = asked[cut];
    const of = (setting?: string) =>
      faces
        .filter((face) => face.cut === cut && (!setting || face.setting === setting))
        .map(({ cells }) => cells);
    const all = of();
    const sure = all.map((cells) => cells.filter((c) => c.seDeg <= 1));
    const told = all.map((cells) => cells.filter((c) => !Number.isNaN(c.errorDeg)));
    const count = sure.flat().length;
    const errors = (cells: readonly CellError[]) => cells.map((c) => c.errorDeg);
    const covered = (cells: readonly CellError[]) =>
      percent(cells.map((c) => Math.abs(c.errorDeg) <= c.seDeg));
    const row = (what: string, n: number, figure: Interval, digits: number, target: Target) =>
      accuracyRow(section, `${cut}: ${what}`, n, figure, digits, target);
    return [
      row(
        'cells that claim 1 deg or better, %',
        all.flat().length,
        bootstrap(all, (cells) => percent(cells.map((c) => c.seDeg <= 1))),
        0,
        { least: share },
      ),
      row(
        'RMSE among them, deg',
        count,
        bootstrap(sure, (c) => rms(errors(c))),
        2,
        { most: rmse },
      ),
      ...settings.map((setting) => {
        const own = of(setting).map((cells) => cells.filter((c) => c.seDeg <= 1));
        return row(
          `RMSE among them, ${setting}, deg`,
          own.flat().length,
          bootstrap(own, (c) => rms(errors(c))),
          2,
          { most: rmse },
        );
      }),
      row(
        'bias among them, deg',
        count,
        bootstrap(sure, (c) => mean(errors(c))),
        3,
        { least: -0.1, most: 0.1 },
      ),
      row(
        'stated error covers the truth, those claiming 1 deg, %',
        count,
        bootstrap(sure, covered),
        0,
        { least: 60, most: 76 },
      ),
      row(
        'stated error covers the truth, every told cell, %',
        told.flat().length,
        bootstrap(told, covered),
        0,
        { least: 60, most: 76 },
      ),
    ];
  });
}

/** Measured against true direction on the grid of `grain`. */
export function cellErrors({ photo, truth }: BenchPanel): CellError[] {
  return grainPanel(photo).cells.map(({ xMm, yMm, angleDeg, angleSeDeg }) => {
    if (angleDeg === null || angleSeDeg === null) return { errorDeg: Number.NaN, seDeg: 90 };
    // The ring line of the cell is its mean over the middle 5 mm, not one point's waviness.
    const error = angleDeg - (truth.meanGrainAngleRad(xMm, yMm, 5) * 180) / Math.PI;
    return { errorDeg: error - 180 * Math.round(error / 180), seDeg: angleSeDeg };
  });
}
