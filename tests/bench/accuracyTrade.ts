import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { bootstrap, mean, sharePercent } from './accuracyIntervals.js';
import { benchHeightMm, benchWidthMm, drawBench, settings } from './accuracyPanels.js';
import { placedSeams } from './accuracyPlaced.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import { ringContrast, seamVByTruth, trueOffset } from './accuracyTruth.js';

const kerfMm = 3.175;
/** On the very axis the lines cross a rip square and a kerf puts none of them out of step. */
const offAxisMm = 20;

/** Common practice, no published source: a kerf in quartered stock vanishes, through a cathedral it shows. */
export function accuracyTrade(rounds: number): AccuracyRow[] {
  const joints = (cut: 'quartered' | 'flatsawn', firstSeed: number) =>
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
  const cathedral = joints('flatsawn', 9650);
  const v = (joint: (typeof quartered)[number]) => joint.seam.visibility.v ?? Number.NaN;
  const gone = quartered.filter((joint) => joint.seam.visibility.word === 'disappears').length;
  const shown = cathedral.filter((joint) => v(joint) >= 2).length;
  const above = cathedral.map(({ panel, seam }) => {
    const turns = seam.windows.map(({ atMm }) => trueOffset(panel, 0, atMm).turnRad);
    const worst = seam.windows.reduce(
      (a, w, i) => ((w.v ?? 0) > (seam.windows[a].v ?? 0) ? i : a),
      0,
    );
    return (100 * turns.filter((turn) => turn <= turns[worst]).length) / turns.length;
  });
  const section = 'Facts of the trade';
  return [
    accuracyRow(
      section,
      'kerf only, quartered: comes out as "disappears", %',
      quartered.length,
      sharePercent(gone, quartered.length),
      0,
      { least: 90 },
    ),
    accuracyRow(
      section,
      'kerf only, quartered: mean V',
      quartered.length,
      bootstrap(
        quartered.map((q) => [v(q)]),
        mean,
      ),
      2,
      { most: 0.5 },
    ),
    accuracyRow(
      section,
      'kerf only, quartered: mean V by truth',
      quartered.length,
      bootstrap(
        quartered.map(({ truth }) => [truth.v]),
        mean,
      ),
      2,
    ),
    accuracyRow(
      section,
      "kerf only, through a cathedral's arm: mean V by truth",
      cathedral.length,
      bootstrap(
        cathedral.map(({ truth }) => [truth.v]),
        mean,
      ),
      2,
    ),
    accuracyRow(
      section,
      "kerf only, through a cathedral's arm: shows (V of 2 or more), %",
      cathedral.length,
      sharePercent(shown, cathedral.length),
      0,
      { least: 90 },
    ),
    accuracyRow(
      section,
      "kerf only, through a cathedral's arm: mean V",
      cathedral.length,
      bootstrap(
        cathedral.map((c) => [v(c)]),
        mean,
      ),
      2,
      { least: 2 },
    ),
    accuracyRow(
      section,
      'its worst window: rank by how fast the lines turn there, % (chance 50)',
      cathedral.length,
      bootstrap(
        above.map((a) => [a]),
        mean,
      ),
      0,
      { least: 67 },
    ),
  ];
}
