import type { ComparedFront, CutEstimate, CutShares } from '../results/compareResult.js';
import type { EndgrainResult } from '../results/endgrainResult.js';
import type { FaceRings } from '../results/faceRings.js';
import { computeGap } from '../shop/movement/computeGap.js';
import type { GapInput } from '../shop/movement/gapInput.js';
import type { RingAngles } from '../shop/movement/ringAngles.js';
import { cutShares } from './cutShares.js';
import { knownRings, steeperBy } from './knownRings.js';
import { type EndSide, type RingProfile, ringsAtFront } from './ringsAtFront.js';

/** How a candidate is sawn and what the season does to a front from it. */
export interface CandidateStock {
  readonly cut: CutShares | null;
  readonly cutBy: 'end' | 'face' | null;
  /** Rings to the face of a board that was drawn; null for a real one. */
  readonly drawnDeg: number | null;
  /** What the shares may be within the error of the ring angles; null where they are not told. */
  readonly cutEstimate: CutEstimate | null;
  /** Where the rings of the gap were seen; null: nowhere, or no gap was asked. */
  readonly ringsBy: 'end' | 'face' | 'drawn' | null;
  readonly gapMm: number | null;
  /** The gap with the rings one standard error flatter and steeper; null without such an error. */
  readonly gapRangeMm: readonly [number, number] | null;
  readonly notes: readonly string[];
}

/** What `candidateStock` goes by. */
export interface StockQuestion {
  /** Rings to the face of a drawn board; null for a real one. */
  readonly imaginedDeg: number | null;
  /** Its end grain as read; null: not photographed. */
  readonly end: EndgrainResult | null;
  readonly endSide: EndSide;
  /** What its face tells of the rings, used where no end does; left out: not asked. */
  readonly faceRings?: FaceRings | null;
  /** The face's size across the grain, mm. */
  readonly faceHeightMm: number;
  /** Where the front would be cut; null: anywhere. */
  readonly front: Pick<ComparedFront, 'yMm' | 'heightMm'> | null;
  readonly gap: Omit<GapInput, 'rings'> | null;
}

/** Share of the gap from which the other end's reading is worth a word. */
const tellingShare = 0.1;
/** Face and end of one board differ by no more than this share of the width. */
const sameWidthShare = 0.1;

/** Said where the end's photo does not go with the face's. */
export const endDiffers =
  'Face and end differ in width: is this end of that board? The rings were stretched to the face.';

/**
 * How a candidate is sawn, from its end grain or else from what its face tells, and the seasonal
 * gap from the rings where the front would be cut (over the whole board when there is no such
 * place).
 */
export function candidateStock(question: StockQuestion): CandidateStock {
  const { imaginedDeg, end, endSide, faceRings, faceHeightMm, front, gap } = question;
  const notes = end ? [...end.notes] : [];
  const fromFace = faceRings && !end?.cut ? cutShares(faceRings.ringAngle) : null;
  const cut = end?.cut ?? fromFace?.cut ?? null;
  const cutEstimate = end?.cut ? cutShares(end.ringAngle) : fromFace;
  const drawn = imaginedDeg === null ? null : ('drawn' as const);
  const cutBy = end?.cut ? 'end' : fromFace ? 'face' : null;
  const sawn = { cut, cutBy, drawnDeg: imaginedDeg, cutEstimate } as const;
  if (!end && !fromFace && !drawn) {
    notes.push('How it is sawn cannot be told from the face alone; photograph the end grain.');
  }
  if (end && Math.abs(end.panel.widthMm - faceHeightMm) > sameWidthShare * faceHeightMm) {
    notes.push(endDiffers);
  }
  if (!gap) {
    notes.push('The seasonal gap needs a species and the air of two seasons.');
    return { ...sawn, ringsBy: drawn, gapMm: null, gapRangeMm: null, notes };
  }
  const at = front ?? { yMm: 0, heightMm: faceHeightMm };
  const known = knownRings(end, faceRings ?? null, faceHeightMm, at);
  const gapFrom = (side: EndSide, errors = 0) => {
    const profile = known ? steeperBy(known.profile, errors) : [];
    const widthMm = known?.widthMm ?? faceHeightMm;
    const strip = ringsAtFront(profile, widthMm, faceHeightMm, side, at.yMm, at.heightMm);
    const rings = ringsOf(imaginedDeg, strip, gap.acrossMm / at.heightMm);
    return computeGap({ ...gap, ...(rings && { rings }) }).gapMm;
  };
  const side = known?.by === 'face' ? 'left' : endSide;
  const gapMm = gapFrom(side);
  if (!known) {
    if (!drawn)
      notes.push('The gap is the flatsawn one, the fullest: the ring angle is not known.');
    return { ...sawn, ringsBy: drawn, gapMm, gapRangeMm: null, notes };
  }
  const tried = [gapMm, gapFrom(side, -1), gapFrom(side, 1)];
  const gapRangeMm = [Math.min(...tried), Math.max(...tried)] as const;
  const told = { ...sawn, ringsBy: known.by, gapMm, gapRangeMm, notes };
  if (known.by === 'face') return told;
  if (front) {
    const other = gapFrom(endSide === 'left' ? 'right' : 'left') / gapMm - 1;
    const change = `${Math.abs(Math.round(100 * other))} % ${other > 0 ? 'more' : 'less'}`;
    notes.push(
      `The gap is that of the rings where the front would be cut, taking the photo for the ${endSide} end with the face up${Math.abs(other) > tellingShare ? `; from the other end it would be ${change}` : ''}.`,
    );
  } else {
    notes.push('The gap is that of the rings over the whole board: no place was asked for.');
  }
  return told;
}

function ringsOf(
  imaginedDeg: number | null,
  profile: RingProfile,
  share: number,
): RingAngles | null {
  if (profile.length > 0)
    return {
      kind: 'measured',
      ringAngle: profile.map(({ xMm, angleDeg }) => ({ xMm: share * xMm, angleDeg })),
    };
  return imaginedDeg === null ? null : { kind: 'angle', angleDeg: imaginedDeg };
}
