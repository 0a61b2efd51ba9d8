import { lineMeasures } from '../../src/core/seam/lineMeasures.js';
import { lostWidth } from '../../src/core/seam/lostWidth.js';
import { ownLines } from '../../src/core/seam/ownLines.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';
import { seamFrame } from '../../src/core/seam/seamFrame.js';
import { seamReach } from '../../src/core/seam/seamReach.js';
import { seamWood } from '../../src/core/seam/seamWood.js';
import { ripSpecs } from './accuracyDrawn.js';
import { type BenchPanel, drawBench } from './accuracyPanels.js';
import { type EdgeTruth, edgeTruth, exactLine, exactOwn } from './lostLimitLines.js';

// What one joint can tell at all: `npm run bench:lost-limit [-- ROUNDS [FIRST SEED]]`.
// Seeds from 400, which the accuracy bench does not use.
const rounds = Number(process.argv[2] ?? 10);
const firstSeed = Number(process.argv[3] ?? 400);
const windowMm = (600 * Math.PI) / 180;

interface Answer {
  readonly lostMm: number;
  readonly slideMm: number;
  readonly lostSeMm: number;
}
interface Trial {
  readonly answer: Answer | null;
  readonly lostMm: number;
  readonly slideMm: number;
}
const trials = new Map<string, Trial[]>();

for (const { spec } of ripSpecs(firstSeed, rounds)) {
  if (spec.boards[0].cut !== 'flatsawn') continue;
  const panel = drawBench(spec);
  panel.truth.seams.forEach((_, k) => {
    weighJoint(panel, k);
  });
}
for (const [name, group] of trials) process.stdout.write(`${row(name, group)}\n`);

function weighJoint({ photo, truth, spec }: BenchPanel, k: number): void {
  const seam = truth.seams[k];
  const frame = seamFrame(seam.line);
  const others = truth.seams.filter((other) => other !== seam).map(({ line }) => line);
  const reach = seamReach(frame, others, photo.widthMm, photo.heightMm);
  const wood = seamWood(panelPlanes(photo), frame, reach.aMm, reach.bMm);
  const read = lineMeasures(wood, 0, windowMm);
  const own = ownLines(wood, reach, windowMm, () => true);
  const { pieceA, pieceB } = spec.seams[k];
  const a = edgeTruth(truth, pieceA, frame, read.profileA.stepMm);
  const b = edgeTruth(truth, pieceB, frame, read.profileA.stepMm);
  const tell = (name: string, answer: Answer | null) => {
    const group = trials.get(name) ?? [];
    group.push({ answer, lostMm: seam.lostMm ?? 0, slideMm: seam.slideMm ?? 0 });
    trials.set(name, group);
  };
  tell('every ring known by its number', byNumber(a, b, read.profileA.stepMm));
  for (const lines of [true, false]) {
    for (const directions of [true, false]) {
      const joint = exactLine(read, a, b, { directions, lines });
      const uncut = lines ? [exactOwn(joint, a)] : own;
      const [how, way] = [lines ? 'exact' : 'read', directions ? 'exact' : 'read'];
      tell(`lines ${how}, directions ${way}`, lostWidth(joint, uncut));
    }
  }
}

/**
 * Width lost and slide by least squares when every ring is known by its number:
 * age_B(xi) = age_A(xi + u) + g (mean slope of age across the gap), Gauss-Newton.
 */
function byNumber(a: EdgeTruth, b: EdgeTruth, stepMm: number): Answer {
  let [g, u] = [4, 0];
  for (let turn = 0; turn < 8; turn++) {
    let [gg, gu, uu, rg, ru] = [0, 0, 0, 0, 0];
    for (let i = 0; i < a.ageMm.length; i++) {
      const at = i + u / stepMm;
      const from = Math.floor(at);
      if (from < 0 || from + 1 >= a.ageMm.length) continue;
      const between = (v: Float64Array) => v[from] + (at - from) * (v[from + 1] - v[from]);
      const across = (between(a.across) + b.across[i]) / 2;
      const along = between(a.along);
      const rest = b.ageMm[i] - between(a.ageMm) - g * across;
      gg += across * across;
      gu += across * along;
      uu += along * along;
      rg += across * rest;
      ru += along * rest;
    }
    const det = gg * uu - gu * gu;
    g += (uu * rg - gu * ru) / det;
    u += (gg * ru - gu * rg) / det;
  }
  return { lostMm: g, slideMm: u, lostSeMm: 0 };
}

function row(name: string, group: readonly Trial[]): string {
  const told = group.flatMap(({ answer, lostMm, slideMm }) =>
    answer ? [{ width: answer.lostMm - lostMm, slide: answer.slideMm - slideMm, ...answer }] : [],
  );
  const sure = told.filter(({ lostSeMm }) => lostSeMm <= 0.6);
  const median = (v: number[]) =>
    v
      .map(Math.abs)
      .sort((x, y) => x - y)
      [v.length >> 1]?.toFixed(2) ?? '-';
  const rms = (v: number[]) =>
    v.length > 0 ? Math.sqrt(v.reduce((s, x) => s + x * x, 0) / v.length).toFixed(2) : '-';
  return [
    `${name}: ${group.length} joints, weighed ${told.length}`,
    `width off by ${median(told.map((t) => t.width))} mm (median), rms ${rms(told.map((t) => t.width))}`,
    `slide rms ${rms(told.map((t) => t.slide))}`,
    `claims 0.6 mm: ${sure.length} (${Math.round((100 * sure.length) / group.length)} %), rms ${rms(sure.map((t) => t.width))}, median ${median(sure.map((t) => t.width))}`,
  ].join('; ');
}
