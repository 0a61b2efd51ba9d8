import { type LineMeasures, lineMeasures } from '../../src/core/seam/lineMeasures.js';
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
/** Errors of the directions read at both edges, deg, by setting. */
const turned = new Map<string, number[]>();
/** What the joints cross, and in how many windows a ring border does. */
const crossed = { rings: [] as number[], anglesDeg: [] as number[], windows: 0, withBorder: 0 };

for (const { spec } of ripSpecs(firstSeed, rounds)) {
  if (spec.boards[0].cut !== 'flatsawn') continue;
  const panel = drawBench(spec);
  panel.truth.seams.forEach((_, k) => {
    weighJoint(panel, k);
  });
}
for (const [name, group] of trials) process.stdout.write(`${row(name, group)}\n`);
for (const [setting, errors] of turned) {
  process.stdout.write(
    `directions at the edges, ${setting}: off by ${median(errors)} deg (median)\n`,
  );
}
process.stdout.write(
  `lines cross at ${median(crossed.anglesDeg)} deg, ${median(crossed.rings)} rings a joint (medians); ` +
    `a ring border in ${crossed.withBorder} of ${crossed.windows} windows\n`,
);

/** How well edges are read, and how little crosses them. */
function countEdge(setting: string, read: LineMeasures, edge: EdgeTruth, side: 'A' | 'B'): void {
  const field = side === 'A' ? read.fieldA : read.fieldB;
  const step = read.profileA.stepMm;
  const errors = turned.get(setting) ?? [];
  turned.set(setting, errors);
  const last = edge.ring.length - 1;
  const at = (xiMm: number) => Math.min(last, Math.max(0, Math.round(xiMm / step - 0.5)));
  field.angleRad.forEach((angle, i) => {
    const k = at((i + 0.5) * field.stepMm);
    const exact = Math.atan2(edge.along[k], -edge.across[k]);
    errors.push((Math.asin(Math.abs(Math.sin(angle - exact))) * 180) / Math.PI);
    crossed.anglesDeg.push((Math.asin(Math.abs(Math.sin(exact))) * 180) / Math.PI);
  });
  const steps = Array.from(edge.ring).map((r, i) => Math.abs(r - edge.ring[Math.max(0, i - 1)]));
  crossed.rings.push(steps.reduce((sum, d) => sum + d, 0));
  for (const { atMm } of read.windows) {
    const rings = Array.from(edge.ring.subarray(at(atMm - windowMm / 2), at(atMm + windowMm / 2)));
    crossed.windows++;
    if (new Set(rings.map(Math.floor)).size > 1) crossed.withBorder++;
  }
}

function median(values: readonly number[]): string {
  return (
    [...values]
      .map(Math.abs)
      .sort((x, y) => x - y)
      [values.length >> 1]?.toFixed(2) ?? '-'
  );
}

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
  const setting = spec.boards[0].setting ?? 'any';
  countEdge(setting, read, a, 'A');
  countEdge(setting, read, b, 'B');
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
  // Least squares state no error of their own here.
  return { lostMm: g, slideMm: u, lostSeMm: Number.NaN };
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
