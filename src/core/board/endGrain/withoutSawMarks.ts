import type { Plane } from '../../image/plane.js';
import { arcProfile, withoutArcs } from './arcProfile.js';
import { bandBelow } from './arcShare.js';
import { exactArcs } from './exactArcs.js';
import { familiesDiffer } from './familiesDiffer.js';
import { roughFamily } from './readRings.js';
import { pithOf, type RingFamily } from './ringFamily.js';

/** A picture of an end without its saw marks, and the arcs that were taken out. */
export interface WithoutSawMarks {
  readonly plane: Plane;
  /** null where no saw marks were found. */
  readonly arcs: RingFamily | null;
}

/** Scratches at both ends of an arc agree better than this only behind a saw: across the rings
 * (of themselves, chance agrees to 0.1) and along the strongest lines, which may be rings. */
const leastAgreement = { across: 0.35, along: 0.57 };
const leastShare = 0.004;
const acrossRad = 0.12;
/** A blade's axle keeps its flange clear of the wood, mm. */
const leastArborMm = 25;
/** Slower changes than this are not saw marks, mm. */
const slowMm = 2.2;

/** Takes the saw's marks out of an end-grain picture: the mean along the saw's own arcs. */
export function withoutSawMarks(logLuminance: Plane, pxPerMm: number): WithoutSawMarks {
  const strongest = roughFamily(logLuminance, pxPerMm);
  const [widthMm, heightMm] = [logLuminance.width / pxPerMm, logLuminance.height / pxPerMm];
  const saw = exactArcs(logLuminance, pxPerMm, strongest).find(({ arcs, agreement, share }) => {
    const across = strongest && familiesDiffer(arcs, strongest, widthMm, heightMm, acrossRad);
    if (awayMm(arcs, widthMm, heightMm) < leastArborMm) return false;
    return share > leastShare && agreement > leastAgreement[across ? 'across' : 'along'];
  });
  if (!saw) return { plane: logLuminance, arcs: null };
  const marks = bandBelow(logLuminance, slowMm * pxPerMm);
  const profile = arcProfile(marks, pxPerMm, saw.arcs, 0.6 / pxPerMm);
  return { plane: withoutArcs(logLuminance, pxPerMm, profile), arcs: saw.arcs };
}

/** How far from the end the centre of the arcs lies; 0 on it. */
function awayMm(arcs: RingFamily, widthMm: number, heightMm: number): number {
  const { xMm, yMm } = pithOf(arcs);
  const dx = Math.max(0, -xMm, xMm - widthMm);
  const dy = Math.max(0, -yMm, yMm - heightMm);
  return Math.hypot(dx, dy);
}
