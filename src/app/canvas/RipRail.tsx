import { memo } from 'react';
import type { RipCost } from '../../core/rip/ripCurve.js';
import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { themes } from '../../report/draw/themes.js';
import { railCurve } from '../../report/score/railCurve.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { Drawing } from './Drawing.js';

const hatchId = 'rip-hatch';

export interface RipRailProps {
  readonly curve: readonly RipCost[];
  readonly frame: ScoreFrame;
  /** The two rips as the front lies, mm from the top. */
  readonly ripsMm: readonly number[];
}

/** What a rip at each height would cost, beside the panel at the same height. */
export function RipRail({ curve, frame, ripsMm }: RipRailProps) {
  const { panel, scale } = frame;
  return (
    <svg aria-hidden="true">
      <Curve
        curve={curve}
        heightMm={panel.height / scale}
        scale={scale}
        y={panel.y}
        stepPx={frame.widthPx < 400 ? 8 : 13}
      />
      {ripsMm.map((yMm) => {
        const y = panel.y + yMm * scale;
        return <line key={yMm} x1={0} x2="100%" y1={y} y2={y} className="at-rip" />;
      })}
    </svg>
  );
}

interface CurveProps {
  readonly curve: readonly RipCost[];
  readonly heightMm: number;
  readonly scale: number;
  readonly y: number;
  readonly stepPx: number;
}

/** Drawn once, however often the front is moved over it. */
const Curve = memo(function Curve({ curve, heightMm, scale, y, stepPx }: CurveProps) {
  // A rip through an area that was left out is not told.
  const samples = curve.map(({ yMm, v, leftOut }) => ({ yMm, v: leftOut ? null : v }));
  const rail = railCurve({ samples, heightMm, scale, x: 4, y, stepPx }, themes.bright, hatchId);
  return <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>${rail.svg}`} />;
});
