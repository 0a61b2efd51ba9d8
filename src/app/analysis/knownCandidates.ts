import type { FaceRings } from '../../core/results/faceRings.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type { FrontReading } from './candidateReading.js';

/** A candidate's face before any cut: how large it is and what is to be known of its photo. */
export interface KnownFace {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly notes: readonly string[];
}

/** What was read of candidates, by what it depends on, for as long as the page is open. */
export const knownCandidates = {
  faces: new Map<string, KnownFace>(),
  curves: new Map<string, readonly RipCost[]>(),
  fronts: new Map<string, FrontReading>(),
  faceRings: new Map<string, FaceRings>(),
};

const most = 200;

/** Forgets all of it when there is too much: what is still wanted is read again. */
export function makeRoomForCandidates(): void {
  const maps = Object.values(knownCandidates);
  if (maps.every(({ size }) => size <= most)) return;
  for (const map of maps) map.clear();
}
