import type { ForecastDepth } from '../results/forecastResult.js';
import { ownFigures } from '../seam/visibilityFromSums.js';
import { degFromRad } from '../units/degFromRad.js';
import { radFromDeg } from '../units/radFromDeg.js';
import { type ForecastLines, reachOfCut } from './forecastLines.js';
import { sumsBetween } from './lineSums.js';
import { type PlanedStretch, planingAllowanceMm, planingShiftMm } from './planing.js';

/** What is known of the rings under the face. */
export interface RingKnowledge {
  /** Rings against the face, degrees, 0 flatsawn to 90 quartered; null unknown. */
  readonly ringAngleDeg: number | null;
  /** Ring width in the tree, mm; with the spacing on the face it gives the angle: sin = w / s. */
  readonly ringWidthMm: number | null;
  readonly fromModel?: boolean;
}

/** Two edges of the uncut panel that meet, and the part of them that counts. */
export interface PlanedEdge {
  readonly etaAMm: number;
  readonly etaBMm: number;
  readonly fromMm: number;
  readonly toMm: number;
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
  const atYMm = edges.map(({ etaAMm, etaBMm }) => (etaAMm + etaBMm) / 2);
  const untold = { atYMm, ringAngleDeg: null, ringAngleFrom: null, shiftPerMm: null };
  if (rings.ringAngleDeg === null && rings.ringWidthMm === null) {
    return {
      ...untold,
      largestMm: null,
      notes: [
        'Planing: cannot tell. A photo of the face does not show how the rings lie beneath it; give the ring angle (from the end grain) or the ring width.',
      ],
    };
  }
  const stretches = edges.flatMap((edge) => stretchesOf(lines, edge, rings));
  if (stretches.length === 0) {
    return {
      ...untold,
      largestMm: null,
      notes: ['Planing: cannot tell, no grain lines cross the front’s edges.'],
    };
  }
  const angles = stretches.map(({ ringAngleRad }) => ringAngleRad).sort((a, b) => a - b);
  const middle = angles[angles.length >> 1];
  const largestMm = planingAllowanceMm(stretches, lines.distanceMm);
  const from = rings.fromModel ? 'wood model' : 'given';
  return {
    atYMm,
    ringAngleDeg: degFromRad(middle),
    ringAngleFrom: rings.ringAngleDeg === null ? 'ring width and line spacing' : from,
    shiftPerMm: planingShiftMm(1, Math.max(0.0087, middle)),
    largestMm,
    notes: largestMm === null ? ['Planing: even 3 mm of difference would disappear here.'] : [],
  };
}

function stretchesOf(
  lines: ForecastLines,
  { etaAMm, etaBMm, fromMm, toMm }: PlanedEdge,
  rings: RingKnowledge,
): PlanedStretch[] {
  const { rip } = lines;
  const own = rip.own(etaAMm, etaBMm, reachOfCut(etaAMm, etaBMm, lines.heightMm));
  const figures = ownFigures(own.map((line) => sumsBetween(line, fromMm, toMm)));
  const joint = rip.joint(etaAMm, etaBMm, 0);
  return joint.grain.flatMap((grain, i) => {
    if (!grain || joint.atMm[i] < fromMm || joint.atMm[i] > toMm) return [];
    const ringAngleRad =
      rings.ringAngleDeg === null
        ? Math.asin(Math.min(1, (rings.ringWidthMm ?? 0) / grain.spacingMm))
        : radFromDeg(rings.ringAngleDeg);
    return [{ grain, ringAngleRad, ownRms: figures[grain.octave]?.rms ?? 0 }];
  });
}
