import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Candidate } from '../analysis/rankCandidates.js';
import { RipRail } from '../canvas/RipRail.js';
import { screenFrame } from '../canvas/screenFrame.js';
import type { PanelOnShelf } from '../images/shelf.js';

export interface CandidatePictureProps {
  readonly candidate: Candidate;
  readonly panel: PanelOnShelf;
  /** Of the widest candidate's width, so that all are at one scale. */
  readonly share: number;
  /** A front is wanted: its best place is drawn, not the best rip. */
  readonly byFront: boolean;
}

/** A candidate's face at the common scale, with the cost of every rip beside it. */
export function CandidatePicture({ candidate, panel, share, byFront }: CandidatePictureProps) {
  const { curve, best } = candidate;
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
    const { small } = panel.drawable;
    target.width = small.width;
    target.height = small.height;
    target.getContext('2d')?.drawImage(small, 0, 0);
  }, [panel]);
  const { widthMm, heightMm } = panel.panel;
  const view = { pxPerMm: widthPx / widthMm, x: 0, y: 0 };
  const frame = screenFrame(view, { width: widthMm, height: heightMm }, widthPx);
  const loss = front ? [front.yMm, front.yMm + front.heightMm] : best && !byFront ? [best.yMm] : [];
  return (
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
  );
}
