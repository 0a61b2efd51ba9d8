import { useRef } from 'react';
import type { PointPx } from '../../core/image/pointPx.js';

export interface PinProps {
  readonly name: string;
  readonly at: PointPx;
  readonly screen: PointPx;
  /** Units of `at` (photo pixels, panel mm) to one screen pixel. */
  readonly unitsPerScreenPx: number;
  /** How far an arrow key moves it, in units of `at`; default 1. */
  readonly keyStep?: number;
  readonly onMove: (to: PointPx) => void;
  readonly onHold: (held: boolean) => void;
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** One pin: dragged by finger or mouse, or moved in small steps by the arrow keys. */
export function Pin({ name, at, screen, unitsPerScreenPx, keyStep = 1, onMove, onHold }: PinProps) {
  const grip = useRef<{ x: number; y: number; at: PointPx } | null>(null);
  const letGo = () => {
    grip.current = null;
    onHold(false);
  };
  return (
    <button
      type="button"
      className="pin"
      style={{ left: screen.x, top: screen.y }}
      aria-label={`${name}. Arrow keys move it, with Shift by ten steps.`}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { x: event.clientX, y: event.clientY, at };
        onHold(true);
      }}
      onPointerMove={(event) => {
        if (!grip.current) return;
        onMove({
          x: grip.current.at.x + (event.clientX - grip.current.x) * unitsPerScreenPx,
          y: grip.current.at.y + (event.clientY - grip.current.y) * unitsPerScreenPx,
        });
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onBlur={letGo}
      onKeyDown={(event) => {
        const way = arrows[event.key];
        if (!way) return;
        event.preventDefault();
        event.stopPropagation();
        const step = keyStep * (event.shiftKey ? 10 : 1);
        onMove({ x: at.x + way[0] * step, y: at.y + way[1] * step });
      }}
    />
  );
}
