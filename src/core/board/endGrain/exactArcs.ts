import { averageDown } from '../../filter/averageDown.js';
import type { Plane } from '../../image/plane.js';
import { alongPlainestLines } from './alongPlainestLines.js';
import { arcShare, endsAgree, type ScatteredLight, scatteredLight } from './arcShare.js';
import { familiesDiffer } from './familiesDiffer.js';
import type { RingFamily } from './ringFamily.js';

/** Arcs (or straight lines) that a saw may have left on an end. */
export interface ExactArcs {
  readonly arcs: RingFamily;
  /** Share of the finest variance that runs in step along them. */
  readonly share: number;
  /** Correlation of the finest detail at the two ends of the arcs, -1 to 1. */
  readonly agreement: number;
}

const workPxPerMm = 5;
/** Points looked at on each scale. */
const samples: readonly number[] = [6000, 12000, 40000];
/** Families left after each scale. */
const kept: readonly number[] = [3, 2, 1];
/** Looked at from ridge to scratch, mm. */
const scalesMm: readonly number[] = [0.9, 0.45, 0.22];
/** Width of the part that is searched first: arcs are told there with far fewer tries. */
const firstPartMm = 45;
/** No blade is smaller than this radius, mm. */
const leastRadiusMm = 55;

/**
 * Families of exact arcs, each with how much of the finest detail runs in step along it.
 *
 * A saw's marks do what no ring does: they run in step over the whole end, along one exact family
 * of arcs, down to the finest scratch, so the two ends of an arc carry the same scratches. Rings
 * waver by tenths of a millimetre on the way and do not.
 *
 * @param strongest the family that most slopes point to, tried too.
 * @returns families, the ones that agree best first.
 */
export function exactArcs(
  logLuminance: Plane,
  pxPerMm: number,
  strongest: RingFamily | null,
): ExactArcs[] {
  const factor = Math.max(1, Math.round(pxPerMm / workPxPerMm));
  const small = averageDown(logLuminance, factor);
  const scale = pxPerMm / factor;
  const crossing = alongPlainestLines(small, scale);
  const found = [
    ...settle(small, scale, [...(strongest ? [strongest] : []), ...startsOf(small, scale)]),
    ...settle(crossing, scale, startsOf(crossing, scale)),
  ];
  const light = scatteredLight(small, scale, scalesMm[2], samples[2]);
  const reachMm = Math.hypot(small.width, small.height) / scale / 2;
  const stepMm = 0.5 * scalesMm[2];
  return found
    .map((one) => judge(light, sharpest(one, light, stepMm, reachMm), stepMm))
    .sort((a, b) => b.agreement - a.agreement);
}

function judge(light: ScatteredLight, arcs: RingFamily, stepMm: number): ExactArcs {
  return { arcs, share: arcShare(light, arcs, stepMm), agreement: endsAgree(light, arcs, stepMm) };
}

/** Sharpens families on finer and finer detail of a picture. */
function settle(plane: Plane, pxPerMm: number, starts: readonly RingFamily[]): RingFamily[] {
  const reachMm = Math.hypot(plane.width, plane.height) / pxPerMm / 2;
  let arcs = [...starts];
  for (const [round, scaleMm] of scalesMm.entries()) {
    const stepMm = 0.5 * scaleMm;
    const light = scatteredLight(plane, pxPerMm, scaleMm, samples[round]);
    arcs = arcs.map((one) => sharpest(one, light, stepMm, reachMm));
    const shares = new Map(arcs.map((one) => [one, arcShare(light, one, stepMm)]));
    arcs = arcs.sort((a, b) => shares.get(b)! - shares.get(a)!).slice(0, kept[round]);
  }
  return arcs;
}

/** The best of all arcs in the middle of the picture, by trying them. */
function startsOf(plane: Plane, pxPerMm: number): RingFamily[] {
  const { width, height } = plane;
  const widthMm = width / pxPerMm;
  const heightMm = height / pxPerMm;
  const light = scatteredLight(plane, pxPerMm, scalesMm[0], 4000, firstPartMm);
  const stepMm = 0.5 * scalesMm[0];
  const reachMm = Math.hypot(Math.min(firstPartMm, widthMm), Math.min(firstPartMm, heightMm)) / 2;
  const turns = Math.ceil(Math.PI / ((1.2 * stepMm) / reachMm));
  const bends = Math.ceil(1 / leastRadiusMm / ((2 * stepMm) / reachMm ** 2));
  const tried: { readonly arcs: RingFamily; readonly share: number }[] = [];
  for (let i = 0; i < turns; i++) {
    for (let j = -bends; j <= bends; j++) {
      const arcs: RingFamily = {
        cxMm: widthMm / 2,
        cyMm: heightMm / 2,
        normalRad: (Math.PI * i) / turns,
        curvature: j / bends / leastRadiusMm,
      };
      tried.push({ arcs, share: arcShare(light, arcs, stepMm) });
    }
  }
  tried.sort((a, b) => b.share - a.share);
  const best: RingFamily[] = [];
  for (const { arcs } of tried) {
    if (best.length === mostStarts) break;
    if (best.every((other) => familiesDiffer(other, arcs, widthMm, heightMm, 0.06)))
      best.push(arcs);
  }
  return best;
}

const mostStarts = 7;

/** Turns and bends the arcs until they explain most. */
function sharpest(
  start: RingFamily,
  light: ScatteredLight,
  stepMm: number,
  reachMm: number,
): RingFamily {
  const moved = (arcs: RingFamily, [a, b]: readonly [number, number], size: number) => ({
    ...arcs,
    normalRad: arcs.normalRad + (a * size * stepMm) / reachMm,
    curvature: arcs.curvature + (2 * b * size * stepMm) / reachMm ** 2,
  });
  let arcs = start;
  let most = arcShare(light, arcs, stepMm);
  for (let size = 4; size > 0.2; size /= 2) {
    for (let round = 0; round < 6; round++) {
      let better = false;
      for (const way of neighbours) {
        const next = moved(arcs, way, size);
        const value = arcShare(light, next, stepMm);
        if (value > most) [arcs, most, better] = [next, value, true];
      }
      if (!better) break;
    }
  }
  return arcs;
}

const neighbours: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
];
