import type { FaceRings } from '../results/faceRings.js';
import type { ForecastDepth } from '../results/forecastResult.js';
import { ownFigures } from '../seam/visibilityFromSums.js';
import { degFromRad } from '../units/degFromRad.js';
import { radFromDeg } from '../units/radFromDeg.js';
import { faceRingAngleAt, type RingAngleAt } from './faceRingAngleAt.js';
import { type ForecastLines, reachOfCut } from './forecastLines.js';
import { sumsBetween } from './lineSums.js';
import { flattestRad, type PlanedStretch, planingAllowanceMm, planingShiftMm } from './planing.js';

/** What is known of the rings under the face. */
export interface RingKnowledge {
  /** Rings against the face, degrees, 0 flatsawn to 90 quartered; null unknown. */
  readonly ringAngleDeg: number | null;
  /** Ring width in the tree, mm; with the spacing on the face it gives the angle: sin = w / s. */
  readonly ringWidthMm: number | null;
  readonly fromModel?: boolean;
  /** What the face itself tells, where nothing is given. */
  readonly face?: FaceRings;
}

/** Two edges of the uncut panel that meet, and the part of them that counts. */
export interface PlanedEdge {
  readonly etaAMm: number;
  readonly etaBMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** A stretch, and how far its ring angle may be off, deg. */
interface ToldStretch extends PlanedStretch {
  readonly seDeg: number;
}

/**
 * How far the lines part when the two sides of these joints are planed by different amounts, and
 * the largest difference that still disappears.
 */
export function forecastDepth(
  lines: ForecastLines,
  edges: readonly PlanedEdge[],
  rings: RingKnowledge,
): ForecastDepth {
  const atYMm = edges.map(middleOf);
  const cannotTell = (notes: readonly string[]): ForecastDepth => ({
    ...{ atYMm, ringAngleDeg: null, ringAngleSeDeg: null, ringAngleFrom: null },
    ...{ shiftPerMm: null, largestMm: null, largestRangeMm: null, notes },
  });
  const isGiven = rings.ringAngleDeg !== null || rings.ringWidthMm !== null;
  if (!isGiven && !edges.some((edge) => angleFromFace(edge, rings))) {
    return cannotTell(['Planing: cannot tell how the rings lie beneath the face.', ...ask(rings)]);
  }
  const stretches = edges.flatMap((edge) => stretchesOf(lines, edge, rings));
  if (stretches.length === 0) {
    return cannotTell(['Planing: cannot tell, no grain lines cross the front’s edges.']);
  }
  const byAngle = [...stretches].sort((a, b) => a.ringAngleRad - b.ringAngleRad);
  // Where the face tells the angle of each edge, the flattest is what matters: its lines move most.
  const told = byAngle[isGiven ? byAngle.length >> 1 : 0];
  const seDeg = isGiven ? null : told.seDeg;
  const allowance = (turnDeg: number) =>
    planingAllowanceMm(turned(stretches, turnDeg), lines.distanceMm);
  const largestMm = allowance(0);
  return {
    atYMm,
    ringAngleDeg: degFromRad(told.ringAngleRad),
    ringAngleSeDeg: seDeg,
    ringAngleFrom: sourceOf(rings, isGiven),
    shiftPerMm: planingShiftMm(1, Math.max(flattestRad, told.ringAngleRad)),
    largestMm,
    largestRangeMm: seDeg === null ? null : [allowance(-seDeg), allowance(seDeg)],
    notes: [
      ...(largestMm === null ? ['Planing: even 3 mm of difference would disappear here.'] : []),
      ...(isGiven ? [] : faceNotes),
    ],
  };
}

const faceNotes = [
  'The ring angle is estimated from how the ring lines draw apart and close up across this face, as if it were one board; a panel glued up of several has its own rings in each. A photo of the end tells it far better.',
];

const ask = ({ face }: RingKnowledge) => [
  ...(face?.notes ?? []),
  'Give the ring angle (from the end grain) or the ring width.',
];

const middleOf = ({ etaAMm, etaBMm }: PlanedEdge) => (etaAMm + etaBMm) / 2;

function angleFromFace(edge: PlanedEdge, { face }: RingKnowledge): RingAngleAt | null {
  return face ? faceRingAngleAt(face, middleOf(edge)) : null;
}

function sourceOf(rings: RingKnowledge, isGiven: boolean): ForecastDepth['ringAngleFrom'] {
  if (!isGiven) return 'face';
  if (rings.ringAngleDeg === null) return 'ring width and line spacing';
  return rings.fromModel ? 'wood model' : 'given';
}

/** All stretches with their rings at so much more to the face. */
function turned(stretches: readonly ToldStretch[], byDeg: number): PlanedStretch[] {
  return stretches.map((one) => ({
    ...one,
    ringAngleRad: Math.min(Math.PI / 2, Math.max(0, one.ringAngleRad + radFromDeg(byDeg))),
  }));
}

function stretchesOf(lines: ForecastLines, edge: PlanedEdge, rings: RingKnowledge): ToldStretch[] {
  const { etaAMm, etaBMm, fromMm, toMm } = edge;
  const { ringAngleDeg, ringWidthMm } = rings;
  const fromFace = angleFromFace(edge, rings);
  const angleAt = (spacingMm: number): number | null => {
    if (ringAngleDeg !== null) return radFromDeg(ringAngleDeg);
    if (ringWidthMm !== null) return Math.asin(Math.min(1, ringWidthMm / spacingMm));
    return fromFace && radFromDeg(fromFace.angleDeg);
  };
  const { rip } = lines;
  const own = rip.own(etaAMm, etaBMm, reachOfCut(etaAMm, etaBMm, lines.heightMm));
  const figures = ownFigures(own.map((line) => sumsBetween(line, fromMm, toMm)));
  const joint = rip.joint(etaAMm, etaBMm, 0);
  return joint.grain.flatMap((grain, i) => {
    if (!grain || joint.atMm[i] < fromMm || joint.atMm[i] > toMm) return [];
    const ringAngleRad = angleAt(grain.spacingMm);
    if (ringAngleRad === null) return [];
    const ownRms = figures[grain.octave]?.rms ?? 0;
    return [{ grain, ringAngleRad, ownRms, seDeg: fromFace?.seDeg ?? 0 }];
  });
}
