import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import type { SeamResult } from '../../src/core/results/scoreResult.js';
import { bootstrap, mean, percent, rms, sharePercent } from './accuracyIntervals.js';
import type { BenchPanel } from './accuracyPanels.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import { trueOffset } from './accuracyTruth.js';

interface WindowError {
  /** Measured less true offset, wrapped to the local spacing. */
  readonly wrappedMm: number;
  /** Off by more than half a spacing, where the wrapped true offset is inside 0.4 of one. */
  readonly wrongCycle: boolean | null;
}

/** One placed seam and what is true of it. */
export interface PlacedSeam {
  readonly cut: string;
  readonly lostMm: number;
  readonly slideMm: number;
  readonly result: SeamResult;
  readonly windows: readonly WindowError[];
}

/** Scores the true seams of a panel as placed by hand. */
export function placedSeams({ photo, truth, spec }: BenchPanel): PlacedSeam[] {
  const placed = truth.seams.map((seam) => seam.line);
  const options = { ...defaultScoreOptions, find: false, placedSeams: placed };
  const { seams } = scorePanel(photo, options);
  return truth.seams.map((seam, k) => {
    const result = seams.find(({ line }) => line === seam.line) ?? seams[k];
    const windows = result.windows.flatMap(({ atMm, offsetMm }) => {
      if (offsetMm === null) return [];
      const true_ = trueOffset({ photo, truth, spec }, k, atMm);
      const s = true_.spacingMm;
      const error = offsetMm - true_.wrappedMm;
      const plain = Math.abs(true_.wrappedMm) < 0.4 * s;
      return [
        {
          wrappedMm: error - s * Math.round(error / s),
          wrongCycle: plain ? Math.abs(error) > s / 2 : null,
        },
      ];
    });
    return {
      cut: spec.boards[0].cut ?? 'flatsawn',
      lostMm: seam.lostMm ?? 0,
      slideMm: seam.slideMm ?? 0,
      result,
      windows,
    };
  });
}

/** Rows on offset, width lost and slide of joints that lost something. */
export function placedRows(seams: readonly PlacedSeam[], pxPerMm: number): AccuracyRow[] {
  const section = `Placed rips, ${pxPerMm} px/mm`;
  const windows = seams.map((seam) => seam.windows);
  const cycles = windows
    .flat()
    .flatMap(({ wrongCycle }) => (wrongCycle === null ? [] : [wrongCycle]));
  const flat = seams.filter(({ cut }) => cut === 'flatsawn');
  const sure = flat.filter(({ result }) => (result.lost.seMm ?? 9) <= 0.6);
  const told = seams.filter(({ result }) => result.lost.mm !== null);
  const wedged = seams.filter(({ result }) => (result.lost.wedgeMm ?? null) !== null);
  const slid = seams.filter(({ result }) => result.lost.slideMm !== null);
  const lostError = ({ result, lostMm }: PlacedSeam) => (result.lost.mm ?? 0) - lostMm;
  const slideError = ({ result, slideMm }: PlacedSeam) => (result.lost.slideMm ?? 0) - slideMm;
  const each = <T>(values: readonly T[]) => values.map((value) => [value]);
  const covers =
    (error: (s: PlacedSeam) => number, se: (s: PlacedSeam) => number) =>
    (group: readonly PlacedSeam[]) =>
      percent(group.map((s) => Math.abs(error(s)) <= se(s)));
  const lostSe = ({ result }: PlacedSeam) => result.lost.seMm ?? 0;
  const slideSe = ({ result }: PlacedSeam) => result.lost.slideSeMm ?? 0;
  const coverage = { least: 60, most: 76 };
  const stretches = seams.reduce((n, { result }) => n + result.windows.length, 0);
  return [
    accuracyRow(
      section,
      'windows whose offset is told, %',
      stretches,
      sharePercent(windows.flat().length, stretches),
      0,
    ),
    accuracyRow(
      section,
      'offset per window, RMSE after wrapping, mm',
      windows.flat().length,
      bootstrap(windows, (w) => rms(w.map((x) => x.wrappedMm))),
      2,
      { most: 0.15 },
    ),
    accuracyRow(
      section,
      'offset per window, median error after wrapping, mm',
      windows.flat().length,
      bootstrap(windows, (w) => median(w.map((x) => Math.abs(x.wrappedMm)))),
      2,
    ),
    accuracyRow(
      section,
      'wrong cycles per window (wrapped true offset within 0.4 of a spacing), %',
      cycles.length,
      sharePercent(cycles.filter(Boolean).length, cycles.length),
      1,
      { most: 5 },
    ),
    accuracyRow(
      section,
      'flatsawn joints whose width lost claims 0.6 mm or better, %',
      flat.length,
      sharePercent(sure.length, flat.length),
      0,
      { least: 50 },
    ),
    accuracyRow(
      section,
      'width lost, RMSE among them, mm',
      sure.length,
      bootstrap(each(sure), (g) => rms(g.map(lostError))),
      2,
      { most: 0.6 },
    ),
    accuracyRow(
      section,
      'width lost, bias among them, mm',
      sure.length,
      bootstrap(each(sure), (g) => mean(g.map(lostError))),
      2,
    ),
    accuracyRow(
      section,
      'width lost: stated error covers the truth, among them, %',
      sure.length,
      sharePercent(sure.filter((s) => Math.abs(lostError(s)) <= lostSe(s)).length, sure.length),
      0,
      coverage,
    ),
    accuracyRow(
      section,
      'width lost told at all, every cut, %',
      seams.length,
      sharePercent(told.length, seams.length),
      0,
    ),
    accuracyRow(
      section,
      'width lost: stated error covers the truth, every told joint, %',
      told.length,
      bootstrap(each(told), covers(lostError, lostSe)),
      0,
      coverage,
    ),
    accuracyRow(
      section,
      'wedge told at all, every cut (none has one), %',
      seams.length,
      sharePercent(wedged.length, seams.length),
      0,
    ),
    accuracyRow(
      section,
      'wedge, RMSE where told, mm',
      wedged.length,
      bootstrap(each(wedged), (g) => rms(g.map(({ result }) => result.lost.wedgeMm ?? 0))),
      2,
    ),
    accuracyRow(
      section,
      'slide told at all, every cut, %',
      seams.length,
      sharePercent(slid.length, seams.length),
      0,
    ),
    accuracyRow(
      section,
      'slide, RMSE where told, mm',
      slid.length,
      bootstrap(each(slid), (g) => rms(g.map(slideError))),
      2,
    ),
    accuracyRow(
      section,
      'slide, RMSE there if "nothing slid" were always said, mm',
      slid.length,
      bootstrap(each(slid), (g) => rms(g.map(({ slideMm }) => slideMm))),
      2,
    ),
    accuracyRow(
      section,
      'slide: stated error covers the truth, %',
      slid.length,
      bootstrap(each(slid), covers(slideError, slideSe)),
      0,
      coverage,
    ),
  ];
}

/** Rows on shams: cut and re-joined with nothing lost. */
export function shamRows(seams: readonly PlacedSeam[], section: string): AccuracyRow[] {
  const told = seams.filter(({ result }) => result.lost.mm !== null);
  const loss = (s: PlacedSeam) => s.result.lost.mm ?? 0;
  const within = told.filter((s) => Math.abs(loss(s)) <= 2 * (s.result.lost.seMm ?? 0)).length;
  return [
    accuracyRow(
      section,
      'sham: mean width lost where told, mm',
      told.length,
      bootstrap(
        told.map((s) => [s]),
        (g) => mean(g.map(loss)),
      ),
      2,
      { least: -0.2, most: 0.2 },
    ),
    accuracyRow(
      section,
      'sham: width lost within 2 stated errors of nothing, %',
      told.length,
      sharePercent(within, told.length),
      0,
      { least: 90 },
    ),
  ];
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length > 0 ? sorted[sorted.length >> 1] : Number.NaN;
}
