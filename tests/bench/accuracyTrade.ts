import type { SeamResult } from '../../src/core/results/scoreResult.js';
import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { bootstrap, type Interval, mean, sharePercent } from './accuracyIntervals.js';
import {
  type BenchPanel,
  benchHeightMm,
  benchWidthMm,
  drawBench,
  settings,
} from './accuracyPanels.js';
import { placedSeams } from './accuracyPlaced.js';
import { type AccuracyRow, accuracyRow, type Target } from './accuracyRow.js';
import { ringContrast, seamVByTruth, type TrueV, trueOffset } from './accuracyTruth.js';

const kerfMm = 3.175;
/** On the very axis the lines cross a rip square and a kerf puts none of them out of step. */
const offAxisMm = 20;

/** One kerf through a drawn board, as scored and as true. */
interface TradeJoint {
  readonly panel: BenchPanel;
  readonly seam: SeamResult;
  readonly truth: TrueV;
}

/** Common practice, no published source: a kerf in quartered stock vanishes, through a cathedral it shows. */
export function accuracyTrade(rounds: number): AccuracyRow[] {
  const joints = (cut: 'quartered' | 'rift' | 'flatsawn', firstSeed: number): TradeJoint[] =>
    Array.from({ length: Math.max(3, Math.round(3 * rounds)) }, (_, i) => {
      const pith = cut === 'flatsawn' ? { pithYMm: benchHeightMm / 2 } : {};
      const board = {
        seed: firstSeed + i,
        setting: settings[i % 3],
        cut,
        lengthMm: benchWidthMm,
        widthMm: benchHeightMm,
        ...pith,
      };
      const cuts = [
        { atMm: benchHeightMm / 2 + (cut === 'flatsawn' ? offAxisMm : 0), lostMm: kerfMm },
      ];
      const size = { board, widthMm: benchWidthMm, heightMm: benchHeightMm };
      const panel = drawBench(ripPanel({ ...size, cuts }));
      const truth = seamVByTruth(panel, 0, ringContrast(panel));
      return { panel, seam: placedSeams(panel)[0].result, truth };
    });
  const quartered = joints('quartered', 9600);
  const rift = joints('rift', 9625);
  const cathedral = joints('flatsawn', 9650);
  const v = ({ seam }: TradeJoint) => seam.visibility.v ?? Number.NaN;
  const vByTruth = ({ truth }: TradeJoint) => truth.v;
  const share = (joints: readonly TradeJoint[], counts: (joint: TradeJoint) => boolean) =>
    sharePercent(joints.filter(counts).length, joints.length);
  const meanOf = (joints: readonly TradeJoint[], value: (joint: TradeJoint) => number) =>
    bootstrap(
      joints.map((joint) => [value(joint)]),
      mean,
    );
  const section = 'Facts of the trade';
  const gone = 'kerf only, quartered';
  const arm = "kerf only, through a cathedral's arm";
  const turn = 'its worst window: rank by how fast the lines turn there';
  const row = (
    what: string,
    joints: readonly TradeJoint[],
    figure: Interval,
    places: number,
    target?: Target,
  ) => accuracyRow(section, what, joints.length, figure, places, target);
  const disappears = share(quartered, ({ seam }) => seam.visibility.word === 'disappears');
  return [
    row(`${gone}: comes out as "disappears", %`, quartered, disappears, 0, { least: 90 }),
    row(
      `${gone}: V below 0.5 by truth, %`,
      quartered,
      share(quartered, (q) => vByTruth(q) < 0.5),
      0,
    ),
    row(`${gone}: mean V`, quartered, meanOf(quartered, v), 2, { most: 0.5 }),
    row(`${gone}: mean V by truth`, quartered, meanOf(quartered, vByTruth), 2),
    row(
      'kerf only, rift: V below 1, %',
      rift,
      share(rift, (r) => v(r) < 1),
      0,
    ),
    row(
      'kerf only, rift: V below 1 by truth, %',
      rift,
      share(rift, (r) => vByTruth(r) < 1),
      0,
    ),
    row('kerf only, rift: mean V', rift, meanOf(rift, v), 2),
    row('kerf only, rift: mean V by truth', rift, meanOf(rift, vByTruth), 2),
    row(
      `${arm}: shows (V of 2 or more), %`,
      cathedral,
      share(cathedral, (c) => v(c) >= 2),
      0,
      { least: 90 },
    ),
    row(
      `${arm}: V of 2 or more by truth, %`,
      cathedral,
      share(cathedral, (c) => vByTruth(c) >= 2),
      0,
    ),
    row(`${arm}: mean V`, cathedral, meanOf(cathedral, v), 2, { least: 2 }),
    row(`${arm}: mean V by truth`, cathedral, meanOf(cathedral, vByTruth), 2),
    row(
      `${turn}, % (chance 50)`,
      cathedral,
      meanOf(cathedral, (c) => turnRank(c, worstOf(c))),
      0,
      { least: 67 },
    ),
    row(
      `${turn}, by truth, %`,
      cathedral,
      meanOf(cathedral, (c) => turnRank(c, c.truth.worstAtMm ?? 0)),
      0,
    ),
  ];
}

/** Place of the most visible stretch, mm along the joint. */
function worstOf({ seam }: TradeJoint): number {
  return seam.windows.reduce((a, w) => ((w.v ?? 0) > (a.v ?? 0) ? w : a)).atMm;
}

/** Share of the joint's stretches whose lines turn no faster than at atMm, %. */
function turnRank({ panel, seam }: TradeJoint, atMm: number): number {
  const turnAt = (mm: number) => trueOffset(panel, 0, mm).turnRad;
  const slower = seam.windows.filter((window) => turnAt(window.atMm) <= turnAt(atMm) + 1e-12);
  return (100 * slower.length) / seam.windows.length;
}
