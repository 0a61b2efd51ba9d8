import { SeamgrainError } from '../errors.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { Progress } from '../progress.js';
import type { ComparedCandidate, ComparedFront, CompareResult } from '../results/compareResult.js';
import type { ForecastPlacement, ForecastResult } from '../results/forecastResult.js';
import type { GapInput } from '../shop/movement/gapInput.js';
import { candidateStock } from './candidateStock.js';
import { compareReason, type JudgedCandidate } from './compareReason.js';
import { byVerdict, curveVerdict, order } from './curveVerdict.js';
import { endgrainPanel } from './endgrainPanel.js';
import { faceRingsPanel } from './faceRingsPanel.js';
import { defaultForecastOptions, type ImaginedWood } from './forecastOptions.js';
import { forecastPanel } from './forecastPanel.js';
import { imagineFace } from './imagineFace.js';
import type { EndSide } from './ringsAtFront.js';
import { sawnAndGap } from './sawnAndGap.js';

/** What the candidates are wanted for, cut with and seen from. */
export interface CompareOptions {
  readonly distanceMm: number;
  readonly kerfMm: number;
  readonly dressMm: number;
  /** The front to cut from them, before trimming; null: a rip anywhere. */
  readonly front: { readonly widthMm: number; readonly heightMm: number } | null;
  /** The season's question, without the rings; null: no gap is worked out. */
  readonly gap: Omit<GapInput, 'rings'> | null;
  /** Which end the photos of end grain show, face up; default left. */
  readonly endSide?: EndSide;
}

/** A panel or board that might be used, and what the user calls it. */
export interface Candidate {
  readonly name: string;
  /** The face: photographed, or a size for the wood model to draw. */
  readonly photo: PanelPhoto | ImaginedFace;
  /** Its end grain, the wide face along the photo's horizontal; null: not photographed. */
  readonly end: PanelPhoto | null;
}

/** A face that is not there yet. */
export interface ImaginedFace {
  readonly wood: ImaginedWood;
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Ranks candidates for a front cut out of them: by what its joints and reveals would show at the
 * best place; without a front's size by the median forecast visibility of a rip over the width
 * (where the front sits is not always free), ties by the best rip.
 *
 * @throws SeamgrainError where a photo cannot be forecast at all.
 */
export function comparePanels(
  candidates: readonly Candidate[],
  options: CompareOptions,
  progress?: Progress,
): CompareResult {
  const judged = candidates.map((candidate, k) => {
    progress?.(k / candidates.length, `forecasting ${candidate.name}`);
    return judge(candidate, options);
  });
  progress?.(1, 'done');
  const ranked = [...judged].sort((a, b) =>
    byWorth(a.candidate, b.candidate, options.front !== null),
  );
  const { distanceMm, kerfMm, dressMm, front } = options;
  return {
    schema: 'seamgrain/compare@1',
    ...{ distanceMm, kerfMm, dressMm, front },
    candidates: ranked.map(({ candidate }, k) => ({
      ...candidate,
      rank: k + 1,
      decides: compareReason(ranked, k, front !== null),
    })),
  };
}

/** The better candidate first: by the front's best place when one is wanted, then by its rips. */
export function byWorth(a: Compared, b: Compared, byFront: boolean): number {
  const first = byFront ? order(a.front?.v ?? null, b.front?.v ?? null) : 0;
  return first || byVerdict(a, b);
}

type Compared = Pick<ComparedCandidate, 'vMedian' | 'vBest'> & {
  readonly front: Pick<ComparedFront, 'v'> | null;
};

interface Judged extends JudgedCandidate {
  readonly candidate: ComparedCandidate;
}

function judge({ name, photo: face, end }: Candidate, options: CompareOptions): Judged {
  const photo = 'wood' in face ? imagineFace(face.wood, face) : face;
  const { distanceMm, kerfMm, dressMm, front } = options;
  const saw = { distanceMm, kerfMm, dressMm };
  const usual = { ...defaultForecastOptions, ...saw, places: 1, withDepth: false };
  const { forecast, misfit } = forecastWith(photo, { ...usual, front });
  const { cue, ...verdict } = curveVerdict(forecast.curve);
  const place = frontOf(forecast);
  const endRings = end && endgrainPanel(end);
  const stock = candidateStock({
    imaginedDeg: 'wood' in face ? face.wood.ringAngleDeg : null,
    end: endRings,
    faceRings: 'wood' in face || endRings?.cut ? null : faceRingsPanel(photo),
    endSide: options.endSide ?? 'left',
    faceHeightMm: photo.heightMm,
    front: place,
    gap: options.gap,
  });
  return {
    cue,
    candidate: {
      photo: name,
      rank: 0,
      isImagined: 'wood' in face,
      widthMm: photo.widthMm,
      heightMm: photo.heightMm,
      ...verdict,
      front: place,
      decides: null,
      ...sawnAndGap(stock),
      notes: [
        ...forecast.notes,
        ...stock.notes,
        ...misfit,
        ...(verdict.vMedian === null ? ['No rip could be forecast: no grain is seen.'] : []),
      ],
    },
  };
}

/** A front that does not fit leaves the rips to be told. */
function forecastWith(
  photo: PanelPhoto,
  options: Parameters<typeof forecastPanel>[1],
): { readonly forecast: ForecastResult; readonly misfit: readonly string[] } {
  try {
    return { forecast: forecastPanel(photo, options), misfit: [] };
  } catch (thrown) {
    if (!(thrown instanceof SeamgrainError) || options.front === null) throw thrown;
    const forecast = forecastPanel(photo, { ...options, front: null });
    return { forecast, misfit: [`The front cannot be taken from it. ${thrown.message}`] };
  }
}

const frontOf = ({ placements }: ForecastResult) => comparedFront(placements[0]);

/** A forecast's place for the front as a comparison tells it; null without one. */
export function comparedFront(best: ForecastPlacement | undefined): ComparedFront | null {
  if (!best) return null;
  const { xMm, yMm, widthMm, heightMm, v, worst, segments } = best;
  const shown = segments.find(({ piece, edge }) => piece === worst.piece && edge === worst.edge);
  return { xMm, yMm, widthMm, heightMm, v, worst: { ...worst, cue: shown?.cue ?? null } };
}
