import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { paint } from '../../report/draw/paint.js';
import { themes } from '../../report/draw/themes.js';
import { justVisibleLine } from '../../report/score/justVisibleLine.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { seamStretches } from '../../report/score/seamStretches.js';
import { stripGround } from '../../report/score/stripGround.js';
import { stripProfile } from '../../report/score/stripProfile.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { Drawing } from './Drawing.js';

export interface SeamStripProps {
  readonly chosen: PlacedSeam;
  readonly frame: ScoreFrame;
  readonly atMm: number | null;
  readonly onAt: (atMm: number) => void;
  readonly label: string;
  /** What is read at `atMm`. */
  readonly spoken: string;
}

const height = 92;
const stepPx = 16;
const hatchId = 'strip-hatch';

/** V along one joint, under the panel at the same x; arrow keys and a finger read places off it. */
export function SeamStrip({ chosen, frame, atMm, onAt, label, spoken }: SeamStripProps) {
  const { seam } = chosen;
  const { x1Mm, x2Mm, y1Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1;
  const spanMm = x2Mm - x1Mm;
  const stepMm = lengthMm / Math.max(1, seam.windows.length);
  const xOf = (at: number) => frame.panel.x + (x1Mm + (spanMm * at) / lengthMm) * frame.scale;
  const keep = (mm: number) => onAt(Math.min(lengthMm, Math.max(0, mm)));
  const point = (event: React.PointerEvent<HTMLDivElement>) => {
    const left = event.currentTarget.getBoundingClientRect().left;
    const xMm = (event.clientX - left - frame.panel.x) / frame.scale;
    if (Math.abs(spanMm) > 1) keep(((xMm - x1Mm) / spanMm) * lengthMm);
  };
  const theme = themes.bright;
  const quiet = paint(theme, 'stroke', 'quiet');
  const way = spanMm < 0 ? -1 : 1;
  const hill = stripProfile(seamStretches(seam), frame.scale, stepPx, hatchId, quiet);
  const ground = stripGround(frame.panel.width, 5, stepPx, theme);
  const line = justVisibleLine(frame.panel.width, stepPx, theme);
  const foot = height - 4;
  return (
    <div
      className="reader"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={Math.round(lengthMm)}
      aria-valuenow={Math.round(atMm ?? 0)}
      aria-valuetext={spoken || 'no place chosen'}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        point(event);
      }}
      onPointerMove={(event) => (event.buttons || event.pointerType === 'mouse') && point(event)}
      onKeyDown={(event) => {
        const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        keep((atMm ?? lengthMm / 2) + by * stepMm);
      }}
    >
      <svg aria-hidden="true">
        <Drawing
          svg={`<defs>${hatchPattern(hatchId)}</defs><g transform="translate(${frame.panel.x} ${foot})">${ground}</g><g transform="translate(${xOf(0)} ${foot}) scale(${way} 1)">${hill}</g><g transform="translate(${frame.panel.x} ${foot})">${line}</g>`}
        />
        {atMm !== null && <line x1={xOf(atMm)} x2={xOf(atMm)} y1={0} y2={height} className="at" />}
      </svg>
    </div>
  );
}
