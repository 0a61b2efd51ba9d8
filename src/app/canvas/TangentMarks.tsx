import type { LineMm } from '../../core/results/scoreResult.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import type { PanelPoint } from './usePanZoom.js';

export interface TangentMarksProps {
  readonly tangents: readonly LineMm[];
  /** First end of a line that is being laid. */
  readonly from: PanelPoint | null;
  readonly frame: ScoreFrame;
}

/** Lines laid along rings by hand, with their ends. */
export function TangentMarks({ tangents, from, frame }: TangentMarksProps) {
  const x = (mm: number) => frame.panel.x + mm * frame.scale;
  const y = (mm: number) => frame.panel.y + mm * frame.scale;
  const dot = (xMm: number, yMm: number) => (
    <circle cx={x(xMm)} cy={y(yMm)} r={5} fill="#fff" stroke="#161616" strokeWidth={1.6} />
  );
  return (
    <>
      {tangents.map(({ x1Mm, y1Mm, x2Mm, y2Mm }) => (
        <g key={`${x1Mm} ${y1Mm} ${x2Mm} ${y2Mm}`}>
          <line
            x1={x(x1Mm)}
            y1={y(y1Mm)}
            x2={x(x2Mm)}
            y2={y(y2Mm)}
            stroke="#161616"
            strokeWidth={5}
          />
          <line x1={x(x1Mm)} y1={y(y1Mm)} x2={x(x2Mm)} y2={y(y2Mm)} stroke="#fff" strokeWidth={2} />
          {dot(x1Mm, y1Mm)}
          {dot(x2Mm, y2Mm)}
        </g>
      ))}
      {from && dot(from.xMm, from.yMm)}
    </>
  );
}
