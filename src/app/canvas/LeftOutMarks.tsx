import type { ViewTransform } from '../geometry/viewTransform.js';
import type { LeftOut } from '../state/project.js';

/** Knots and glare that are left out: hatched, for nothing is told there. */
export function LeftOutMarks({
  patches,
  view,
}: {
  readonly patches: readonly LeftOut[];
  readonly view: ViewTransform;
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
          cx={xMm * view.pxPerMm + view.x}
          cy={yMm * view.pxPerMm + view.y}
          rx={radiusXMm * view.pxPerMm}
          ry={radiusYMm * view.pxPerMm}
          fill="url(#left-out)"
          stroke="#111"
          strokeWidth={1.5}
        />
      ))}
    </g>
  );
}
