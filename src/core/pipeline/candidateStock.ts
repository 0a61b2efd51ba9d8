import type { PanelPhoto } from '../image/panelPhoto.js';
import type { CutShares } from '../results/compareResult.js';
import { computeGap } from '../shop/movement/computeGap.js';
import type { GapInput } from '../shop/movement/gapInput.js';
import type { RingAngles } from '../shop/movement/ringAngles.js';
import { endgrainPanel } from './endgrainPanel.js';

/** How a candidate is sawn and what the season does to a front from it. */
export interface CandidateStock {
  readonly cut: CutShares | null;
  readonly gapMm: number | null;
  readonly notes: readonly string[];
}

/**
 * Reads a candidate's end grain, where there is a photo of it, and works out the seasonal gap from
 * what it says.
 *
 * @param imaginedDeg rings to the face of a drawn board; null for a real one.
 */
export function candidateStock(
  imaginedDeg: number | null,
  end: PanelPhoto | null,
  gap: Omit<GapInput, 'rings'> | null,
): CandidateStock {
  const read = end && endgrainPanel(end);
  const notes = read ? [...read.notes] : [];
  if (!read && imaginedDeg === null) {
    notes.push('How it is sawn cannot be told from the face alone; photograph the end grain.');
  }
  if (!gap) {
    notes.push('The seasonal gap needs a species and the air of two seasons.');
    return { cut: read?.cut ?? null, gapMm: null, notes };
  }
  // A front may be taken from anywhere: the board's own mean over its width stands for it.
  const share = end ? gap.acrossMm / end.widthMm : 1;
  const rings = ringsOf(imaginedDeg, read?.ringAngle ?? [], share);
  if (!rings) notes.push('The gap is the flatsawn one, the fullest: the ring angle is not known.');
  const { gapMm } = computeGap({ ...gap, ...(rings && { rings }) });
  return { cut: read?.cut ?? null, gapMm, notes };
}

function ringsOf(
  imaginedDeg: number | null,
  ringAngle: readonly { readonly xMm: number; readonly angleDeg: number }[],
  share: number,
): RingAngles | null {
  if (ringAngle.length > 0)
    return {
      kind: 'measured',
      ringAngle: ringAngle.map(({ xMm, angleDeg }) => ({ xMm: share * xMm, angleDeg })),
    };
  return imaginedDeg === null ? null : { kind: 'angle', angleDeg: imaginedDeg };
}
