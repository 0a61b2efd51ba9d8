import { useState } from 'react';
import type { LineMm } from '../../core/results/scoreResult.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { Pin } from './Pin.js';

export interface SeamEndsProps {
  readonly line: LineMm;
  readonly frame: ScoreFrame;
  readonly onMoved: (to: LineMm) => void;
}

/** Two pins at the ends of a joint; it moves when one is let go, or by half a millimetre a key. */
export function SeamEnds({ line, frame, onMoved }: SeamEndsProps) {
  const [draft, setDraft] = useState<LineMm | null>(null);
  const shown = draft ?? line;
  const drop = () => {
    if (draft) onMoved(draft);
    setDraft(null);
  };
  const ends = [
    { name: 'First end of the joint', at: { x: shown.x1Mm, y: shown.y1Mm } },
    { name: 'Second end of the joint', at: { x: shown.x2Mm, y: shown.y2Mm } },
  ] as const;
  const toScreen = ({ x, y }: { x: number; y: number }) => ({
    x: x * frame.scale + frame.panel.x,
    y: y * frame.scale + frame.panel.y,
  });
  const [a, b] = [toScreen(ends[0].at), toScreen(ends[1].at)];
  return (
    <>
      <svg className="marks" aria-hidden="true">
        <line x1={a.x} y1={a.y} x2={b.x} y2={b.y} stroke="#fff" strokeWidth={3} />
        <line x1={a.x} y1={a.y} x2={b.x} y2={b.y} stroke="#111" strokeWidth={1} />
      </svg>
      {ends.map(({ name, at }, index) => (
        <Pin
          key={name}
          name={name}
          at={at}
          screen={toScreen(at)}
          unitsPerScreenPx={1 / frame.scale}
          keyStep={0.5}
          onMove={({ x, y }) =>
            setDraft(index === 0 ? { ...shown, x1Mm: x, y1Mm: y } : { ...shown, x2Mm: x, y2Mm: y })
          }
          onHold={(held) => !held && drop()}
        />
      ))}
    </>
  );
}
