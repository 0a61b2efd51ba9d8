import { SeamgrainError } from '../../core/errors.js';
import { type CandidateStock, candidateStock } from '../../core/pipeline/candidateStock.js';
import type { Project } from '../state/project.js';
import { woodOf } from './candidateBoards.js';
import { gapInputOf } from './gapInputOf.js';
import type { Candidate } from './rankCandidates.js';

/** A candidate's stock, and the width that its gap is for. */
export interface ShownStock extends CandidateStock {
  /** Of the front, or of the whole board while no front is wanted. */
  readonly acrossMm: number;
}

/** Which season the gaps are for, as the project keeps it. */
export const seasonWords = ({ species, shop, home }: Project['gap']): string =>
  `Gaps are for ${species}, from air of ${airText(shop)} when fitted to ${airText(home)} at the other end of the year`;

const airText = (typed: string) => typed.replace(/\s*@\s*/, ' at ');

/** How a candidate is sawn and what the project's seasons do to it; null until it is read. */
export function stockOf(
  { board, front, heightMm, rings }: Candidate,
  { gap, settings }: Pick<Project, 'gap' | 'settings'>,
): ShownStock | null {
  if (!rings || !heightMm) return null;
  const acrossMm = settings.candidatesFor === 'front' ? settings.frontHeightMm : heightMm;
  const question = {
    imaginedDeg: board.imagined && woodOf(board.imagined).ringAngleDeg,
    end: rings.end,
    endSide: board.photo?.endSide ?? 'left',
    faceRings: rings.face,
    faceHeightMm: heightMm,
    front: front?.place ?? null,
  };
  try {
    const season = { ...gapInputOf(gap, settings), acrossMm };
    return { ...candidateStock({ ...question, gap: season }), acrossMm };
  } catch (thrown) {
    // Air or wood that cannot be: the shop sheet says so.
    if (!(thrown instanceof SeamgrainError)) throw thrown;
    return { ...candidateStock({ ...question, gap: null }), acrossMm };
  }
}

/**
 * How much less or more one moves than another: gap to width over the other's. null where the rings of
 * one are not known, or the two are within twice the error of their rings.
 */
export function movesShare(one: ShownStock | null, other: ShownStock | null): number | null {
  const [mine, others] = [gapShares(one), gapShares(other)];
  if (!mine || !others) return null;
  if (Math.abs(mine.share - others.share) <= sure * Math.hypot(mine.se, others.se)) return null;
  const share = mine.share / others.share;
  return Math.abs(Math.log(share)) < tellingLog ? null : share;
}

function gapShares(stock: ShownStock | null) {
  if (!stock?.ringsBy || !stock.gapMm) return null;
  const { gapMm, gapRangeMm, acrossMm } = stock;
  const [least, most] = gapRangeMm ?? [gapMm, gapMm];
  return { share: gapMm / acrossMm, se: (most - least) / 2 / acrossMm };
}

/** Standard errors from which a difference is one. */
const sure = 2;
/** A tenth more or less is not worth a word. */
const tellingLog = Math.log(1.1);
