import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import { heightOfV, ruledLevels } from './heightOfV.js';
import { LevelLine } from './LevelLine.js';

const across = 76;

/** How visible each joint is, beside the panel at the joint's own height. */
export function SeamRail({
  seams,
  view,
}: {
  readonly seams: readonly PlacedSeam[];
  readonly view: ViewTransform;
}) {
  return (
    <svg aria-hidden="true">
      {ruledLevels.map((v) => (
        <line
          key={v}
          x1={across - heightOfV(v, across)}
          x2={across - heightOfV(v, across)}
          y1={0}
          y2="100%"
          stroke="var(--line)"
          strokeWidth={v === 1 ? 1.5 : 0.75}
        />
      ))}
      {seams
        .filter(({ runs }) => runs === 'along')
        .map(({ seam, number }) => {
          const y = ((seam.line.y1Mm + seam.line.y2Mm) / 2) * view.pxPerMm + view.y;
          const reach = heightOfV(seam.visibility.v ?? 0, across);
          return (
            <g key={seam.id}>
              <LevelLine
                x1={across}
                x2={across - Math.max(5, reach)}
                y1={y}
                y2={y}
                level={levelOfVisibility(seam.visibility.v)}
              />
              <text x={6} y={y - 8}>
                {number}
              </text>
            </g>
          );
        })}
    </svg>
  );
}
