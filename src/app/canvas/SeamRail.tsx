import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { themes } from '../../report/draw/themes.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { crosscutRail } from '../../report/score/crosscutRail.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { stepsOfV } from '../../report/score/stepsOfV.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { Drawing } from './Drawing.js';

const hatchId = 'rail-hatch';
const thickPx = 8;
const numberPx = 16;

export interface SeamRailProps {
  readonly placed: readonly PlacedSeam[];
  readonly chosen: PlacedSeam | null;
  readonly frame: ScoreFrame;
}

/**
 * Beside the panel, at the same height: how visible each joint is, or, when a crosscut is chosen,
 * how visible that is along its length.
 */
export function SeamRail({ placed, chosen, frame }: SeamRailProps) {
  const stepPx = frame.widthPx < 400 ? 5.5 : 11;
  if (chosen?.runs === 'across') {
    const rail = { x: numberPx, y: frame.panel.y, width: 5 * stepPx, height: frame.panel.height };
    const scaled = { ...frame, railStepPx: stepPx };
    const piece = crosscutRail([chosen], rail, scaled, themes.bright, hatchId);
    return (
      <svg aria-hidden="true">
        <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>${piece.svg}`} />
      </svg>
    );
  }
  const rows = rowsOf(placed.filter(({ runs }) => runs === 'along'));
  return (
    <svg aria-hidden="true">
      <line
        x1={numberPx + 2 * stepPx}
        x2={numberPx + 2 * stepPx}
        y1={0}
        y2="100%"
        className="just-visible"
      />
      <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>`} />
      {rows.map(({ seam, numbers, isOne }) => {
        const y = frame.panel.y + ((seam.line.y1Mm + seam.line.y2Mm) / 2) * frame.scale;
        const level = levelOfVisibility(seam.visibility.v);
        return (
          <g key={seam.id}>
            <text x={isOne ? 4 : 2} y={isOne ? y + 4 : y - thickPx / 2 - 3}>
              {numbers}
            </text>
            <rect
              x={numberPx}
              y={y - thickPx / 2}
              width={stepPx * stepsOfV(seam.visibility.v)}
              height={thickPx}
              fill={level?.colour ?? `url(#${hatchId})`}
              className="bar"
            />
          </g>
        );
      })}
    </svg>
  );
}

interface Row {
  readonly seam: PlacedSeam['seam'];
  readonly numbers: string;
  /** The number stands before the bar; several stand above it. */
  readonly isOne: boolean;
}

/** Pieces of one line lie at one height: one bar for them, of the most visible, with all numbers. */
function rowsOf(joints: readonly PlacedSeam[]): Row[] {
  return [...new Set(joints.map(({ row }) => row))].map((row) => {
    const pieces = joints.filter((each) => each.row === row);
    const [first, last] = [pieces[0]!.number, pieces.at(-1)!.number];
    const seam = pieces
      .map((each) => each.seam)
      .reduce((a, b) => ((b.visibility.v ?? 0) > (a.visibility.v ?? 0) ? b : a));
    const isOne = first === last;
    return { seam, isOne, numbers: isOne ? `${first}` : `${first}–${last}` };
  });
}
