import type { CandidateStock } from '../../core/pipeline/candidateStock.js';
import type { CutEstimate, CutShares } from '../../core/results/compareResult.js';
import { cutText } from './cutText.js';

/** The finest step in which shares of a width are worth telling. */
const stepPercent = 5;

/**
 * How a candidate is sawn, in a sentence: by what that is known, and how far it may be off (the
 * farthest that any share comes from its figure within the error of the ring angles).
 */
export function sawnText(
  stock: Pick<CandidateStock, 'cut' | 'cutBy' | 'cutEstimate' | 'drawnDeg'>,
): string {
  const { cut, cutBy, cutEstimate, drawnDeg } = stock;
  if (drawnDeg !== null) return `Drawn with its rings at ${Math.round(drawnDeg)}° to the face.`;
  if (!cut) return '';
  const off = cutEstimate ? offPercent(cut, cutEstimate) : 0;
  const by = cutBy === 'end' ? 'By its end' : 'By its face about';
  const shares = cutBy === 'end' ? cut : inSteps(cut);
  return `${by} ${cutText(shares)}${off > 0 ? `, give or take ${off} %` : ''}.`;
}

/** The same for a candidate whose face alone tells it. */
export const sawnByFace = (cutEstimate: CutEstimate): string =>
  sawnText({ cut: cutEstimate.cut, cutBy: 'face', cutEstimate, drawnDeg: null });

function offPercent(
  cut: CutShares,
  { least, most }: NonNullable<CandidateStock['cutEstimate']>,
): number {
  const farthest = (['flatsawn', 'rift', 'quartered'] as const).reduce(
    (far, name) => Math.max(far, most[name] - cut[name], cut[name] - least[name]),
    0,
  );
  return stepPercent * Math.ceil((100 * farthest) / stepPercent - 1e-9);
}

/** An estimate is told in coarse steps; the largest share takes what rounding leaves. */
function inSteps(cut: CutShares): CutShares {
  const rounded = (name: keyof CutShares) =>
    (stepPercent * Math.round((100 * cut[name]) / stepPercent)) / 100;
  const all = {
    flatsawn: rounded('flatsawn'),
    rift: rounded('rift'),
    quartered: rounded('quartered'),
  };
  const names = ['flatsawn', 'rift', 'quartered'] as const;
  const largest = names.reduce((a, b) => (cut[b] > cut[a] ? b : a));
  const rest = names.reduce((sum, name) => (name === largest ? sum : sum + all[name]), 0);
  return { ...all, [largest]: 1 - rest };
}
