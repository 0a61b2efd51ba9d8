import { useRef } from 'react';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import type { FrontPlace } from '../state/project.js';

export interface FrontHandleProps {
  readonly place: FrontPlace;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly frame: ScoreFrame;
  /** Called while dragging; the moves of one drag share a gesture. */
  readonly onMove: (to: FrontPlace, gesture: string) => void;
  /** Told when it is taken hold of and let go. */
  readonly onHold?: (held: boolean) => void;
  readonly label?: string;
  /** Drawn thinly, so that the joints under it can be judged. */
  readonly faint?: boolean;
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The front on the panel: dragged by finger or mouse, or moved by a millimetre a key. */
export function FrontHandle(props: FrontHandleProps) {
  const {
    place,
    widthMm,
    heightMm,
    frame,
    onMove,
    onHold,
    label = 'The front',
    faint = false,
  } = props;
  const grip = useRef<{ x: number; y: number; place: FrontPlace; gesture: string } | null>(null);
  const letGo = () => {
    if (grip.current) onHold?.(false);
    grip.current = null;
  };
  return (
    <button
      type="button"
      className={`front-handle${faint ? ' faint' : ''}`}
      style={{
        left: frame.panel.x + place.xMm * frame.scale,
        top: frame.panel.y + place.yMm * frame.scale,
        width: widthMm * frame.scale,
        height: heightMm * frame.scale,
      }}
      aria-label={`${label}. Arrow keys move it by a millimetre, with Shift by ten.`}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        onHold?.(true);
        grip.current = {
          x: event.clientX,
          y: event.clientY,
          place,
          gesture: crypto.randomUUID(),
        };
      }}
      onPointerMove={(event) => {
        if (!grip.current) return;
        const { x, y, place: from, gesture } = grip.current;
        onMove(
          {
            xMm: from.xMm + (event.clientX - x) / frame.scale,
            yMm: from.yMm + (event.clientY - y) / frame.scale,
          },
          gesture,
        );
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onKeyDown={(event) => {
        const way = steps[event.key];
        if (!way) return;
        event.preventDefault();
        event.stopPropagation();
        const step = event.shiftKey ? 10 : 1;
        const to = { xMm: place.xMm + way[0] * step, yMm: place.yMm + way[1] * step };
        onMove(to, 'keys');
      }}
    />
  );
}
