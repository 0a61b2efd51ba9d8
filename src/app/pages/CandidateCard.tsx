import type { ReactNode } from 'react';
import { type CandidateStock, endDiffers } from '../../core/pipeline/candidateStock.js';
import { frontText } from '../../report/compare/describeCompare.js';
import { gapSentence } from '../../report/compare/gapSentence.js';
import { sawnText } from '../../report/compare/sawnText.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { placeText } from '../../report/words/placeText.js';
import type { Candidate } from '../analysis/rankCandidates.js';
import type { ShownStock } from '../analysis/stockOf.js';
import { Fractions } from '../parts/Fractions.js';
import { CandidatePicture, type CandidatePictureProps } from './CandidatePicture.js';

export interface CandidateCardProps extends CandidatePictureProps {
  /** null until all candidates are read. */
  readonly rank: number | null;
  /** What decides about it; empty until all are read. */
  readonly decides: string;
  /** null until its rings are read. */
  readonly stock: ShownStock | null;
  readonly units: LengthUnits;
  /** What can be said or done of it beside. */
  readonly children: ReactNode;
}

/** One candidate: its picture, what a cut would show, what decides, how it is sawn and moves. */
export function CandidateCard(props: CandidateCardProps) {
  const { candidate, rank, decides, stock, byFront, units, children } = props;
  const { board, notes } = candidate;
  const cautions = [...notes, ...(stock?.notes.includes(endDiffers) ? [endDiffers] : [])];
  return (
    <li className={`candidate${board.imagined ? ' drawn' : ''}`}>
      <CandidatePicture {...props} />
      <div className="row">
        <strong>
          {rank === null ? '' : `${rank}. `}
          {board.name}
        </strong>
        <span>{decides}</span>
      </div>
      {cautions.map((note) => (
        <p key={note} className="caution">
          {note}
        </p>
      ))}
      <div className="about">
        <p>
          <Fractions text={lookText(candidate, byFront, units)} />{' '}
          <Fractions text={stockText(stock, byFront, units)} />
        </p>
        <div className="actions">{children}</div>
      </div>
    </li>
  );
}

function stockText(stock: ShownStock | null, ofFront: boolean, units: LengthUnits): string {
  if (!stock) return '';
  const sawn = sawnText(stock) || untoldText(stock);
  return [sawn, gapSentence(stock, stock.acrossMm, ofFront, units)].join(' ').trim();
}

const untoldText = ({ notes }: CandidateStock) =>
  notes.some((note) => note.includes('photograph the end grain'))
    ? 'Its face does not tell how it is sawn; its end would.'
    : 'Neither its end nor its face tells how it is sawn.';

function lookText(
  { curve, front, vMedian, best }: Candidate,
  byFront: boolean,
  units: LengthUnits,
): string {
  if (curve === null) return 'Not tried yet.';
  if (byFront && !front) return 'Not tried yet.';
  if (byFront && front)
    return front.place
      ? frontText(front.place, units)
      : `The front cannot be taken from it. ${front.why}`;
  const bestWord = levelOfVisibility(best?.v ?? null)?.word;
  const medianWord = levelOfVisibility(vMedian)?.word;
  return best && bestWord && medianWord
    ? `A typical rip: ${medianWord}. The best, ${placeText(best.yMm, units)} from the top: ${bestWord}.`
    : 'The photo cannot tell what a rip would show.';
}
