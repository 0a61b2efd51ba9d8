import type { PlacedSeam } from '../../report/words/placedSeam.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import { LevelLine } from './LevelLine.js';
import { seamBand } from './seamBand.js';

export interface SeamMarksProps {
  readonly seams: readonly PlacedSeam[];
  readonly view: ViewTransform;
  readonly chosenId: string | null;
}

const besidePx = 9;

/** Each joint drawn beside its line, never over it, with its number at the left or upper end. */
export function SeamMarks({ seams, view, chosenId }: SeamMarksProps) {
  return seams.map((placed) => (
    <SeamMark
      key={placed.seam.id}
      placed={placed}
      view={view}
      chosen={placed.seam.id === chosenId}
    />
  ));
}

function SeamMark({
  placed: { seam, runs, number },
  view,
  chosen,
}: {
  readonly placed: PlacedSeam;
  readonly view: ViewTransform;
  readonly chosen: boolean;
}) {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm) || 1;
  const shiftX = runs === 'along' ? 0 : -besidePx;
  const shiftY = runs === 'along' ? -besidePx : 0;
  const place = (atMm: number) => ({
    x: (x1Mm + ((x2Mm - x1Mm) * atMm) / lengthMm) * view.pxPerMm + view.x + shiftX,
    y: (y1Mm + ((y2Mm - y1Mm) * atMm) / lengthMm) * view.pxPerMm + view.y + shiftY,
  });
  const first = place(0);
  const badge = { x: Math.max(14, first.x + 14), y: Math.max(14, first.y + (shiftY ? 0 : 14)) };
  return (
    <g>
      {seamBand(seam).map(({ fromMm, toMm, level }) => {
        const a = place(fromMm);
        const b = place(toMm);
        return (
          <LevelLine
            key={fromMm}
            x1={a.x}
            y1={a.y}
            x2={b.x}
            y2={b.y}
            level={level}
            thickest={chosen ? 12 : 9}
          />
        );
      })}
      <circle
        cx={badge.x}
        cy={badge.y}
        r={chosen ? 12 : 10}
        fill="#fff"
        stroke="#111"
        strokeWidth={chosen ? 3 : 1.5}
      />
      <text
        x={badge.x}
        y={badge.y}
        fill="#111"
        fontSize={13}
        fontWeight={700}
        textAnchor="middle"
        dominantBaseline="central"
      >
        {number}
      </text>
    </g>
  );
}
