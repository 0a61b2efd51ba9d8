import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { frontText } from '../../report/compare/describeCompare.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { placeText } from '../../report/words/placeText.js';
import type { Candidate } from '../analysis/rankCandidates.js';
import { RipRail } from '../canvas/RipRail.js';
import { screenFrame } from '../canvas/screenFrame.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Fractions } from '../parts/Fractions.js';

export interface CandidateCardProps {
  readonly candidate: Candidate;
  /** null until all candidates are read. */
  readonly rank: number | null;
  readonly board: PanelOnShelf;
  /** Of the widest candidate's width, so that all are at one scale. */
  readonly share: number;
  /** A front is wanted: its best place is drawn, not the best rip. */
  readonly byFront: boolean;
  readonly units: LengthUnits;
  readonly onChoose: () => void;
}

/** One candidate: its picture at the common scale, the cost of every rip beside it, and words. */
export function CandidateCard(props: CandidateCardProps) {
  const { candidate, rank, board, share, byFront, units, onChoose } = props;
  const { photo, curve, best } = candidate;
  const front = byFront ? (candidate.front?.place ?? null) : null;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const element = canvas.current!;
    const measure = () => setWidthPx(element.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  useEffect(() => {
    const target = canvas.current;
    if (!target) return;
    const { small } = board.drawable;
    target.width = small.width;
    target.height = small.height;
    target.getContext('2d')?.drawImage(small, 0, 0);
  }, [board]);
  const { widthMm, heightMm } = board.panel;
  const view = { pxPerMm: widthPx / widthMm, x: 0, y: 0 };
  const frame = screenFrame(view, { width: widthMm, height: heightMm }, widthPx);
  const loss = front ? [front.yMm, front.yMm + front.heightMm] : best && !byFront ? [best.yMm] : [];
  return (
    <li className="candidate">
      <div className="panel-frame with-rail">
        <div className="rail">
          {curve && widthPx > 0 && <RipRail curve={curve} frame={frame} ripsMm={loss} />}
        </div>
        <canvas
          ref={canvas}
          style={{ width: `${100 * share}%`, aspectRatio: `${widthMm} / ${heightMm}` }}
        />
        {front && (
          <svg
            className="front-outline"
            viewBox={`0 0 ${widthMm} ${heightMm}`}
            style={{ width: `${100 * share}%` }}
            aria-hidden="true"
          >
            {['under', 'over'].map((name) => (
              <rect
                key={name}
                className={name}
                x={front.xMm}
                y={front.yMm}
                width={front.widthMm}
                height={front.heightMm}
              />
            ))}
          </svg>
        )}
      </div>
      <div className="row">
        <strong>
          {rank === null ? '' : `${rank}. `}
          {photo.name}
        </strong>
        <span>
          <Fractions text={wordsOf(candidate, byFront, units)} />
        </span>
        <button type="button" onClick={onChoose} aria-label={`Place a front on it: ${photo.name}`}>
          Place a front on it
        </button>
      </div>
      {candidate.notes.map((note) => (
        <p key={note} className="caution">
          {note}
        </p>
      ))}
    </li>
  );
}

function wordsOf(
  { curve, front, vMedian, best }: Candidate,
  byFront: boolean,
  units: LengthUnits,
): string {
  if (curve === null) return 'Trying every rip…';
  if (byFront && !front) return 'Trying every place for the front…';
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
