import { useEffect, useRef } from 'react';
import type { PointPx } from '../../core/image/pointPx.js';
import type { Extent } from '../geometry/viewTransform.js';
import type { Drawable } from '../images/drawableOf.js';

const across = 132;
const zoom = 3;
const awayPx = 100;

/** A round glass that shows what the finger covers, three times as large, to one side of it. */
export function Magnifier({
  drawable,
  at,
  screen,
  stage,
}: {
  readonly drawable: Drawable;
  readonly at: PointPx;
  readonly screen: PointPx;
  readonly stage: Extent;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const drawing = canvas.current?.getContext('2d');
    if (!drawing) return;
    const shown = across / zoom;
    drawing.fillStyle = '#888';
    drawing.fillRect(0, 0, across, across);
    drawing.imageSmoothingEnabled = false;
    drawing.drawImage(
      drawable.full,
      at.x - shown / 2,
      at.y - shown / 2,
      shown,
      shown,
      0,
      0,
      across,
      across,
    );
    for (const [colour, wide] of [
      ['#fff', 3],
      ['#111', 1],
    ] as const) {
      drawing.strokeStyle = colour;
      drawing.lineWidth = wide;
      drawing.beginPath();
      drawing.moveTo(across / 2, across / 2 - 18);
      drawing.lineTo(across / 2, across / 2 + 18);
      drawing.moveTo(across / 2 - 18, across / 2);
      drawing.lineTo(across / 2 + 18, across / 2);
      drawing.stroke();
    }
  }, [drawable, at.x, at.y]);
  const below = screen.y < awayPx + across / 2;
  const left = Math.min(stage.width - across, Math.max(0, screen.x - across / 2));
  const top = below ? screen.y + awayPx - across / 2 : screen.y - awayPx - across / 2;
  return (
    <canvas
      ref={canvas}
      className="magnifier"
      width={across}
      height={across}
      style={{ left, top: Math.min(stage.height - across, Math.max(0, top)) }}
    />
  );
}
