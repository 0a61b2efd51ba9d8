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
  const stepPx = frame.widthPx < 400 ? 8 : 13;
  const { panel, scale } = frame;
  const rail = railCurve(
    {
      samples: curve.map(({ yMm, v }) => ({ yMm, v })),
      heightMm: panel.height / scale,
      scale,
      x: 4,
      y: panel.y,
      stepPx,
    },
    themes.bright,
    hatchId,
  );
  return (
    <svg aria-hidden="true">
      <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>${rail.svg}`} />
      {ripsMm.map((yMm) => {
        const y = panel.y + yMm * scale;
        return <line key={yMm} x1={0} x2="100%" y1={y} y2={y} className="at-rip" />;
      })}
    </svg>
  );
}
