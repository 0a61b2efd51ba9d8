import { cannotTellLook, type VisibilityLevel } from '../../report/ramp/visibilityRamp.js';

export interface LevelLineProps {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  /** null: cannot tell. */
  readonly level: VisibilityLevel | null;
  readonly thickest?: number;
}

const dashes: Record<VisibilityLevel['shape'], (t: number) => string | undefined> = {
  hairline: () => undefined,
  dots: (t) => `0.1 ${2.4 * t}`,
  dashes: (t) => `${2.2 * t} ${1.4 * t}`,
  solid: () => undefined,
  toothed: (t) => `${0.5 * t} ${0.25 * t}`,
};

/** A line in the look of its level: colour, thickness and shape, on a dark edge for any wood. */
export function LevelLine({ x1, y1, x2, y2, level, thickest = 9 }: LevelLineProps) {
  const thickness = level ? Math.max(2, level.thickness * thickest) : 4;
  const ends = { x1, y1, x2, y2 };
  if (!level) {
    return (
      <g>
        <line {...ends} stroke={cannotTellLook.ground} strokeWidth={thickness + 2} />
        <line
          {...ends}
          stroke={cannotTellLook.stroke}
          strokeWidth={thickness}
          strokeDasharray="2 4"
        />
      </g>
    );
  }
  const round = level.shape === 'dots';
  const dash = dashes[level.shape](thickness);
  const cap = round ? 'round' : 'butt';
  return (
    <g>
      <line
        {...ends}
        stroke="#1a1a1a"
        strokeWidth={thickness + 2.5}
        strokeDasharray={round ? dash : undefined}
        strokeLinecap={cap}
        opacity={0.75}
      />
      <line
        {...ends}
        stroke={level.colour}
        strokeWidth={thickness}
        strokeDasharray={dash}
        strokeLinecap={cap}
      />
    </g>
  );
}
