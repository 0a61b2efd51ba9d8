import type { ArrangedJoint } from '../../core/results/arrangeResult.js';
import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { stepsOfV } from '../../report/score/stepsOfV.js';
import { Drawing } from './Drawing.js';

const hatchId = 'boards-hatch';

/** How visible each joint would be, at the joint's own height beside the boards. */
export function JointRail({
  joints,
  heights,
}: {
  readonly joints: readonly (ArrangedJoint | null)[];
  readonly heights: readonly number[];
}) {
  let y = 0;
  return (
    <svg aria-hidden="true">
      <line x1={22} x2={22} y1={0} y2="100%" className="just-visible" />
      <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>`} />
      {joints.map((joint, index) => {
        y += heights[index] ?? 0;
        const level = joint ? levelOfVisibility(joint.v) : null;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a joint is its place from the top
          <g key={index}>
            {joint ? (
              <rect
                x={4}
                y={y - 5}
                width={9 * stepsOfV(joint.v)}
                height={10}
                fill={level?.colour ?? `url(#${hatchId})`}
                className="bar"
              />
            ) : (
              <text x={6} y={y + 4}>
                …
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
