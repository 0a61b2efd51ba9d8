import type {
  LineMm,
  ScoreResult,
  SeamResult,
  SeamWindow,
} from '../../src/core/results/scoreResult.js';
import type { Cue, VisibilityWord } from '../../src/core/results/visibilityResult.js';

/** INVENTED results for the tests of the report: no photo was measured for them. */

const words: readonly [number, VisibilityWord][] = [
  [0.5, 'disappears'],
  [1, 'only if told'],
  [2, 'if you look for it'],
  [4.000001, 'shows'],
  [Number.POSITIVE_INFINITY, 'jumps out'],
];

/** A seam whose visibility follows `vAt` (share of its length from 0 to 1); null = untold there. */
export function inventedSeam(
  id: string,
  line: LineMm,
  vAt: (share: number) => number | null,
  change: Partial<SeamResult> & { readonly cue?: Cue; readonly windowCount?: number } = {},
): SeamResult {
  const lengthMm = Math.hypot(line.x2Mm - line.x1Mm, line.y2Mm - line.y1Mm);
  const count = change.windowCount ?? Math.max(1, Math.round(lengthMm / 10.5));
  const windows: SeamWindow[] = Array.from({ length: count }, (_, index) => {
    const share = (index + 0.5) / count;
    const v = vAt(share);
    return {
      atMm: share * lengthMm,
      v,
      cue: v === null ? null : (change.cue ?? 'break'),
      offsetMm: v === null ? null : Math.min(2.4, v * 0.6),
      changeDeg: v === null ? null : v * 0.5,
    };
  });
  const told = windows.map((window) => window.v).filter((v) => v !== null);
  const v =
    told.length === 0 ? null : Math.cbrt(told.reduce((sum, x) => sum + x ** 3, 0) / told.length);
  const { cue, windowCount: _, ...rest } = change;
  return {
    id,
    found: 'photo',
    line,
    p: 0.004,
    visibility: {
      v,
      pSeen: v === null ? null : 1 - 2 ** -(v ** 3),
      vanishesAtMm: v === null || v < 1 ? null : 600 * v ** 1.1,
      cue: v === null ? null : (cue ?? 'break'),
      word: v === null ? null : words.find(([below]) => v < below)![1],
    },
    grain: { angleADeg: 4.2, angleBDeg: 5.1, changeDeg: v === null ? null : 0.9, changeSeDeg: 0.4 },
    offset: { mm: v === null ? null : 1.2, seMm: 0.15, spacingMm: 4.4 },
    lost: { mm: 3.1, seMm: 0.4, slideMm: 0.6, slideSeMm: 2.4 },
    colourStep: { deltaE00: 0.7 },
    glueLine: { widthMm: 0.08, contrast: 0.12 },
    windows,
    notes: v === null ? ['Nothing crosses the joint and nothing differs there.'] : [],
    ...rest,
  };
}

export function inventedScore(
  seams: readonly SeamResult[],
  panel = { widthMm: 760, heightMm: 380, pxPerMm: 6.2 },
  notes: readonly string[] = [],
): ScoreResult {
  const worst = seams
    .filter((seam) => seam.visibility.v !== null)
    .sort((a, b) => b.visibility.v! - a.visibility.v!)[0];
  return {
    schema: 'seamgrain/score@1',
    panel,
    seams,
    visibility: { v: worst?.visibility.v ?? null, word: worst?.visibility.word ?? null },
    notes,
  };
}

const bump = (share: number, centre: number, width: number) =>
  Math.exp(-(((share - centre) / width) ** 2));
const wobble = (share: number) => 1 + 0.18 * Math.sin(share * 67) + 0.1 * Math.sin(share * 151 + 1);

/** A panel with a drawer front cut out of it and its surround glued back: two rips, two crosscuts. */
export const inventedChestPanel: ScoreResult = inventedScore(
  [
    inventedSeam('s1', { x1Mm: 0, y1Mm: 118, x2Mm: 760, y2Mm: 117 }, (t) => 0.3 * wobble(t)),
    inventedSeam(
      's2',
      { x1Mm: 0, y1Mm: 262, x2Mm: 760, y2Mm: 263.5 },
      (t) =>
        t > 0.86 && t < 0.93
          ? null
          : (0.6 + 4.4 * bump(t, 0.48, 0.09) + 2.2 * bump(t, 0.2, 0.06)) * wobble(t),
      { lost: { mm: 6, seMm: 2, slideMm: 0, slideSeMm: 24 } },
    ),
    inventedSeam('s3', { x1Mm: 130, y1Mm: 118, x2Mm: 130, y2Mm: 262 }, (t) => 0.8 * wobble(t), {
      found: 'placed',
      p: null,
    }),
    inventedSeam(
      's4',
      { x1Mm: 628, y1Mm: 118, x2Mm: 628, y2Mm: 262 },
      (t) => (1.1 + bump(t, 0.7, 0.2)) * wobble(t),
      {
        cue: 'direction',
      },
    ),
  ],
  undefined,
  ['Light falls off by a third towards the right; colour is judged against that.'],
);

/** Two long joints, the upper one good. */
export const inventedGoodAndBad: ScoreResult = inventedScore([
  inventedSeam('s1', { x1Mm: 0, y1Mm: 104, x2Mm: 760, y2Mm: 104 }, (t) => 0.25 * wobble(t)),
  inventedSeam(
    's2',
    { x1Mm: 0, y1Mm: 262, x2Mm: 760, y2Mm: 263 },
    (t) => (0.7 + 4.2 * bump(t, 0.48, 0.12)) * wobble(t),
  ),
]);

/** One joint in straight quartered stock that nothing crosses. */
export const inventedUntold: ScoreResult = inventedScore([
  inventedSeam('s1', { x1Mm: 0, y1Mm: 190, x2Mm: 760, y2Mm: 190 }, () => null, {
    found: 'placed',
    p: null,
    lost: { mm: null, seMm: null, slideMm: null, slideSeMm: null },
    offset: { mm: null, seMm: null, spacingMm: null },
  }),
]);

/** Nothing there. */
export const inventedSeamless: ScoreResult = inventedScore([], undefined, []);

/** Seven boards edge to edge. */
export const inventedManyBoards: ScoreResult = inventedScore(
  Array.from({ length: 6 }, (_, index) =>
    inventedSeam(
      `s${index + 1}`,
      { x1Mm: 0, y1Mm: 70 + 66 * index, x2Mm: 1150, y2Mm: 70 + 66 * index + (index % 3) },
      (t) =>
        [0.3, 0.7, 1.4, 2.6, 0.4, 5][index]! *
        (0.5 + bump(t, 0.1 + 0.15 * index, 0.25)) *
        wobble(t),
      index % 2 ? { cue: 'colour' } : {},
    ),
  ),
  { widthMm: 1150, heightMm: 470, pxPerMm: 2.6 },
  ['At 2.6 px/mm fine grain cannot be judged.'],
);
