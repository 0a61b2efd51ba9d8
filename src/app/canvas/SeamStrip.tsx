import type { SeamResult, SeamWindow } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { cannotTellLook, visibilityRamp } from '../../report/ramp/visibilityRamp.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import { heightOfV, ruledLevels } from './heightOfV.js';

export interface SeamStripProps {
  readonly seam: SeamResult;
  readonly view: ViewTransform;
  readonly panelWidthMm: number;
  readonly atMm: number | null;
  readonly onAt: (atMm: number) => void;
  readonly label: string;
  /** What is read at `atMm`. */
  readonly spoken: string;
}

const height = 92;

/** V along one joint, under the panel at the same x; arrow keys and a finger read places off it. */
export function SeamStrip(props: SeamStripProps) {
  const { seam, view, panelWidthMm, atMm, onAt, label, spoken } = props;
  const { x1Mm, x2Mm, y1Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1;
  const stepMm = lengthMm / Math.max(1, seam.windows.length);
  const xOf = (at: number) => (x1Mm + ((x2Mm - x1Mm) * at) / lengthMm) * view.pxPerMm + view.x;
  const move = (by: number) =>
    onAt(Math.min(lengthMm, Math.max(0, (atMm ?? lengthMm / 2) + by * stepMm)));
  const point = (event: React.PointerEvent<HTMLDivElement>) => {
    const left = event.currentTarget.getBoundingClientRect().left;
    const xMm = (event.clientX - left - view.x) / view.pxPerMm;
    const span = x2Mm - x1Mm;
    if (Math.abs(span) < 1) return;
    onAt(Math.min(lengthMm, Math.max(0, ((xMm - x1Mm) / span) * lengthMm)));
  };
  return (
    <div
      className="reader"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={Math.round(lengthMm)}
      aria-valuenow={Math.round(atMm ?? 0)}
      aria-valuetext={spoken}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        point(event);
      }}
      onPointerMove={(event) => (event.buttons || event.pointerType === 'mouse') && point(event)}
      onKeyDown={(event) => {
        const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
        if (by === undefined) return;
        event.preventDefault();
        move(by);
      }}
    >
      <svg aria-hidden="true">
        {ruledLevels.map((v) => (
          <line
            key={v}
            x1={view.x}
            x2={view.x + panelWidthMm * view.pxPerMm}
            y1={height - heightOfV(v, height)}
            y2={height - heightOfV(v, height)}
            stroke="var(--line)"
            strokeWidth={v === 1 ? 1.5 : 0.75}
          />
        ))}
        {seam.windows.map((window) => (
          <Bar
            key={window.atMm}
            window={window}
            x={xOf(window.atMm)}
            wide={Math.abs(xOf(stepMm) - xOf(0))}
          />
        ))}
        {atMm !== null && (
          <line
            x1={xOf(atMm)}
            x2={xOf(atMm)}
            y1={0}
            y2={height}
            stroke="var(--text)"
            strokeWidth={2}
          />
        )}
      </svg>
    </div>
  );
}

function Bar({ window: { v }, x, wide }: { window: SeamWindow; x: number; wide: number }) {
  const level = levelOfVisibility(v);
  const tall = v === null ? height - 8 : Math.max(3, heightOfV(v, height));
  const shown = Math.max(2, wide - 1);
  return (
    <rect
      x={x - shown / 2}
      y={height - tall}
      width={shown}
      height={tall}
      fill={level?.colour ?? cannotTellLook.ground}
      stroke={level ? 'var(--strong-line)' : cannotTellLook.stroke}
      strokeWidth={level === visibilityRamp[0] ? 1 : 0.5}
      strokeDasharray={level ? undefined : '2 3'}
    />
  );
}
