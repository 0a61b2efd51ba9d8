import type { Plane } from '../../image/plane.js';
import { familiesDiffer } from './familiesDiffer.js';
import type { FittedRings } from './fitRings.js';
import { readRings } from './readRings.js';
import { withoutSawMarks } from './withoutSawMarks.js';

/** What lies on an end besides its rings, and what was done about it. */
export type SawMarks = 'none' | 'taken out' | 'perhaps the rings';

/** The rings of an end, and the picture that they were read from. */
export interface EndReading {
  readonly plane: Plane;
  /** null where no rings stand out. */
  readonly rings: FittedRings | null;
  readonly sawMarks: SawMarks;
}

/** Rings seen behind a saw's marks run at least this far off them, rad (rms over the end; 6 deg). */
const ownWayRad = 0.1;

/**
 * Takes a saw's marks out of an end's picture and reads the rings.
 *
 * Marks are told by running exactly (`withoutSawMarks`). Every end has rings: where others show once
 * the exact lines are gone, those lines were marks. Where none do, the lines are taken for the rings,
 * which in a planed end of even growth run nearly as exactly, and the answer has to say so.
 */
export function readEnd(logLuminance: Plane, pxPerMm: number): EndReading {
  const { plane, arcs } = withoutSawMarks(logLuminance, pxPerMm);
  const rings = readRings(plane, pxPerMm)?.fitted ?? null;
  if (!arcs) return { plane, rings, sawMarks: 'none' };
  const [widthMm, heightMm] = [plane.width / pxPerMm, plane.height / pxPerMm];
  if (rings && familiesDiffer(rings.family, arcs, widthMm, heightMm, ownWayRad)) {
    return { plane, rings, sawMarks: 'taken out' };
  }
  const exact = readRings(logLuminance, pxPerMm)?.fitted;
  return exact
    ? { plane: logLuminance, rings: exact, sawMarks: 'perhaps the rings' }
    : { plane, rings: null, sawMarks: 'taken out' };
}
