import { type ReactNode, useEffect, useRef } from 'react';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import type { Drawable } from '../images/drawableOf.js';
import { drawPicture } from './drawPicture.js';
import { screenFrame } from './screenFrame.js';
import { type PanelPoint, usePanZoom } from './usePanZoom.js';

export interface PanelSurfaceProps {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly drawable: Drawable;
  /** What a screen reader hears of the picture. */
  readonly label: string;
  readonly placing?: boolean;
  readonly onTap?: (point: PanelPoint) => void;
  readonly onHover?: (point: PanelPoint | null) => void;
  /** Marks over the panel, drawn in screen pixels under the view. */
  readonly marks?: (frame: ScoreFrame) => ReactNode;
  /** Things to take hold of, over the marks, placed in screen pixels under the view. */
  readonly handles?: ((frame: ScoreFrame) => ReactNode) | undefined;
  /** What varies across the width, beside the panel at the same height. */
  readonly rail?: ((frame: ScoreFrame) => ReactNode) | undefined;
  /** What varies along the length, under the panel at the same x. */
  readonly strip?: ((frame: ScoreFrame) => ReactNode) | undefined;
  readonly corner?: ReactNode;
  /** Draws more on the picture's own canvas, under the marks. */
  readonly overpaint?: ((canvas: HTMLCanvasElement, view: ViewTransform) => void) | undefined;
}

/** The panel itself, large, with everything else lined up to it. */
export function PanelSurface(props: PanelSurfaceProps) {
  const { widthMm, heightMm, drawable, label, marks, handles, rail, strip, corner, overpaint } =
    props;
  const { surface, view, size, handlers, zoom, whole, isWhole } = usePanZoom(
    { width: widthMm, height: heightMm },
    {
      ...(props.onTap ? { onTap: props.onTap } : {}),
      ...(props.onHover ? { onHover: props.onHover } : {}),
    },
  );
  const frame = screenFrame(view, { width: widthMm, height: heightMm }, size.width);
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (!canvas.current || !size.width) return;
    drawPicture(canvas.current, drawable, widthMm, view);
    overpaint?.(canvas.current, view);
  }, [drawable, widthMm, view, size.width, overpaint]);

  return (
    <div className="stack">
      <div className={`panel-frame${rail ? ' with-rail' : ''}`}>
        {rail && <div className="rail">{rail(frame)}</div>}
        <div
          ref={surface}
          className={`panel-surface${props.placing ? ' placing' : ''}`}
          style={{ aspectRatio: `${widthMm} / ${heightMm}`, maxHeight: '72vh' }}
          role="application"
          aria-roledescription="panel picture"
          aria-label={`${label}. Arrow keys move, plus and minus zoom, 0 shows the whole, Enter taps the middle.`}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture pans and zooms by keys
          tabIndex={0}
          {...handlers}
        >
          <canvas ref={canvas} />
          {marks && (
            <svg className="marks" aria-hidden="true" width={size.width} height={size.height}>
              {marks(frame)}
            </svg>
          )}
          {handles?.(frame)}
        </div>
        {rail && strip && <div className="corner">{corner}</div>}
        {strip && <div className="strip">{strip(frame)}</div>}
      </div>
      <div className="row">
        <button type="button" onClick={() => zoom(1.6)} aria-label="Zoom in">
          +
        </button>
        <button type="button" onClick={() => zoom(1 / 1.6)} aria-label="Zoom out">
          −
        </button>
        <button type="button" onClick={whole} disabled={isWhole}>
          Whole panel
        </button>
      </div>
    </div>
  );
}
