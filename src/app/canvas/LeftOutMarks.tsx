import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import type { LeftOut } from '../state/project.js';

/** Knots and glare that are left out: hatched, for nothing is told there. */
export function LeftOutMarks({
  patches,
  frame,
}: {
  readonly patches: readonly LeftOut[];
  readonly frame: ScoreFrame;
}) {
  return (
    <g>
      <defs>
        <pattern id="left-out" width="7" height="7" patternUnits="userSpaceOnUse">
          <path d="M0 7L7 0" stroke="#111" strokeWidth="1.2" />
          <path d="M0 8.500L8.500 0" stroke="#fff" strokeWidth="1" />
        </pattern>
      </defs>
      {patches.map(({ id, xMm, yMm, radiusXMm, radiusYMm }) => (
        <ellipse
          key={id}
          cx={xMm * frame.scale + frame.panel.x}
          cy={yMm * frame.scale + frame.panel.y}
          rx={radiusXMm * frame.scale}
          ry={radiusYMm * frame.scale}
          fill="url(#left-out)"
          stroke="#111"
          strokeWidth={1.5}
        />
      ))}
    </g>
  );
}
