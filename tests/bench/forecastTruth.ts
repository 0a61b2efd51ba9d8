import { defaultScoreOptions } from '../../dist/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../dist/core/pipeline/scorePanel.js';
import { createRandom } from '../../dist/core/random/createRandom.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { ripCost } from '../../dist/core/rip/ripCurve.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { onePiecePanel } from '../../dist/core/wood/onePiecePanel.js';
import { ripPanel } from '../../dist/core/wood/ripPanel.js';
import { photographed } from './forecastPhoto.js';
import { type Agreement, agreement } from './forecastStatistics.js';

const size = { widthMm: 400, heightMm: 150 };
const lossMm = 3.175;
const settings = ['ring-porous', 'diffuse-porous', 'softwood'] as const;
const cuts = ['flatsawn', 'flatsawn', 'flatsawn', 'rift', 'quartered'] as const;

/** Forecast, forecast by angle, and a second photo's score, each against the score after the cut. */
export interface TruthResult {
  readonly forecast: Agreement;
  /** The curve's quick reading of the same rips. */
  readonly curve: Agreement;
  readonly byAngle: Agreement;
  readonly again: Agreement;
}

/**
 * Draws boards, photographs them uncut and forecasts three rips each; cuts them in the model,
 * photographs them anew with other light, tilt, noise and compression, twice, and scores that.
 */
export async function forecastTruth(boards: number, firstSeed: number): Promise<TruthResult> {
  const forecast: [number, number][] = [];
  const curve: [number, number][] = [];
  const byAngle: [number, number][] = [];
  const again: [number, number][] = [];
  for (let b = 0; b < boards; b++) {
    const seed = firstSeed + b;
    const random = createRandom(seed);
    const board = {
      ...{ seed, setting: settings[b % 3]!, cut: cuts[b % 5]! },
      ...{ lengthMm: size.widthMm + 60, widthMm: size.heightMm + 40 },
    };
    const base = { board, widthMm: size.widthMm, uMm: 20, vMm: 20 };
    const uncut = await photographed(onePiecePanel({ ...base, heightMm: size.heightMm }), seed);
    const lines = forecastLines(panelPlanes(uncut), uncut, 600);
    for (const middle of [45, 75, 105]) {
      const atMm = middle + random.uniform(-8, 8) - lossMm / 2;
      const cost = ripCost(lines.asScored.rip, atMm, lossMm, size.heightMm);
      const quick = ripCost(lines.rip, atMm, lossMm, size.heightMm);
      const heightMm = size.heightMm - lossMm;
      const cut = ripPanel({ ...base, heightMm, cuts: [{ atMm, lostMm: lossMm }] });
      const placed = { x1Mm: 0, y1Mm: atMm, x2Mm: size.widthMm, y2Mm: atMm };
      const options = { ...defaultScoreOptions, find: false, placedSeams: [placed] };
      const scored = async (shot: number) =>
        scorePanel(await photographed(cut, shot), options).seams[0]?.visibility.v ?? 0;
      const [first, second] = [await scored(seed + 100_000), await scored(seed + 200_000)];
      forecast.push([cost.v ?? 0, first]);
      curve.push([quick.v ?? 0, first]);
      byAngle.push([cost.vByAngle ?? 0, first]);
      again.push([second, first]);
    }
    process.stderr.write(`truth ${b + 1}/${boards}\r`);
  }
  return {
    forecast: agreement(forecast),
    curve: agreement(curve),
    byAngle: agreement(byAngle),
    again: agreement(again),
  };
}
