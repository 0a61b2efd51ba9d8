import type { PanelPhoto } from '../image/panelPhoto.js';
import type { ComparedFront, CutShares } from '../results/compareResult.js';
import { computeGap } from '../shop/movement/computeGap.js';
import type { GapInput } from '../shop/movement/gapInput.js';
import type { RingAngles } from '../shop/movement/ringAngles.js';
import { endgrainPanel } from './endgrainPanel.js';
import { type EndSide, type RingProfile, ringsAtFront } from './ringsAtFront.js';

/** How a candidate is sawn and what the season does to a front from it. */
export interface CandidateStock {
  readonly cut: CutShares | null;
  readonly gapMm: number | null;
  readonly notes: readonly string[];
}

/** What `candidateStock` goes by. */
export interface StockQuestion {
  /** Rings to the face of a drawn board; null for a real one. */
  readonly imaginedDeg: number | null;
  readonly end: PanelPhoto | null;
  readonly endSide: EndSide;
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

/**
 * Reads a candidate's end grain, where there is a photo of it, and works out the seasonal gap from
 * the rings where the front would be cut (over the whole board when there is no such place).
 */
export function candidateStock(question: StockQuestion): CandidateStock {
  const { imaginedDeg, end, endSide, faceHeightMm, front, gap } = question;
  const read = end && endgrainPanel(end);
  const notes = read ? [...read.notes] : [];
  const cut = read?.cut ?? null;
  if (!read && imaginedDeg === null) {
    notes.push('How it is sawn cannot be told from the face alone; photograph the end grain.');
  }
  if (end && Math.abs(end.widthMm - faceHeightMm) > sameWidthShare * faceHeightMm) {
    notes.push(
      'Face and end differ in width: is this end of that board? The rings were stretched to the face.',
    );
  }
  if (!gap) {
    notes.push('The seasonal gap needs a species and the air of two seasons.');
    return { cut, gapMm: null, notes };
  }
  const profile = read?.ringAngle ?? [];
  const at = front ?? { yMm: 0, heightMm: faceHeightMm };
  const gapFrom = (side: EndSide) => {
    const strip =
      end && ringsAtFront(profile, end.widthMm, faceHeightMm, side, at.yMm, at.heightMm);
    const rings = ringsOf(imaginedDeg, strip ?? [], gap.acrossMm / at.heightMm);
    return computeGap({ ...gap, ...(rings && { rings }) }).gapMm;
  };
  const gapMm = gapFrom(endSide);
  if (profile.length === 0) {
    if (imaginedDeg === null)
      notes.push('The gap is the flatsawn one, the fullest: the ring angle is not known.');
    return { cut, gapMm, notes };
  }
  if (front) {
    const other = gapFrom(endSide === 'left' ? 'right' : 'left') / gapMm - 1;
    const told = `${Math.abs(Math.round(100 * other))} % ${other > 0 ? 'more' : 'less'}`;
    notes.push(
      `The gap is that of the rings where the front would be cut, taking the photo for the ${endSide} end with the face up${Math.abs(other) > tellingShare ? `; from the other end it would be ${told}` : ''}.`,
    );
  } else {
    notes.push('The gap is that of the rings over the whole board: no place was asked for.');
  }
  return { cut, gapMm, notes };
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
