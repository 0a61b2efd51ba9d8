import { defaultArrangeOptions } from '../../src/core/board/arrange/arrangeOptions.js';
import { noRules } from '../../src/core/board/arrange/arrangeRules.js';
import { arrangePanel } from '../../src/core/pipeline/arrangePanel.js';
import { imagineFace } from '../../src/core/pipeline/imagineFace.js';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import { mixedSet } from './boardSets.js';

/** Working scale of squared-up photos, px/mm. */
const pxPerMm = 7;

/** Processor seconds, the least of four rounds: another program at work does not count. */
const rounds = 4;

/** Seconds for 8 boards with both faces, 32 MP of squared-up photos, and for one 12 MP panel. */
export function boardsSpeed(seed: number): { readonly arrangeS: number; readonly scoreS: number } {
  const boards = mixedSet(seed, 8, { lengthMm: 800, pxPerMm, heightMm: 51 }, true);
  const panel = imagineFace(
    { ringAngleDeg: 15, ringWidthMm: 2, contrast: 1, setting: 'softwood', seed },
    { widthMm: 700, heightMm: 350 },
    pxPerMm,
  );
  const options = { ...defaultArrangeOptions, jointMm: 0.4 };
  let [arrangeS, scoreS] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < rounds; round++) {
    scoreS = Math.min(
      scoreS,
      seconds(() => scorePanel(panel, defaultScoreOptions)),
    );
    arrangeS = Math.min(
      arrangeS,
      seconds(() => arrangePanel(boards, options, noRules)),
    );
  }
  return { arrangeS, scoreS };
}

function seconds(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  return process.cpuUsage(start).user / 1e6;
}
