import type { SeamResult } from '../../core/results/scoreResult.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { placeText } from '../../report/words/placeText.js';
import { worstPlaces } from '../../report/words/worstPlaces.js';
import type { ViewTransform } from '../geometry/viewTransform.js';

/** The worst place of each joint that is seen at all: an open ring and its distance from the left. */
export function WorstMarks({
  seams,
  view,
  units,
}: {
  readonly seams: readonly SeamResult[];
  readonly view: ViewTransform;
  readonly units: LengthUnits;
}) {
  const places = seams.flatMap((seam) =>
    worstPlaces(seam, { leastV: 1 }).map((place) => ({ ...place, id: seam.id })),
  );
  return places.map(({ id, xMm, yMm }) => {
    const x = xMm * view.pxPerMm + view.x;
    const y = yMm * view.pxPerMm + view.y;
    return (
      <g key={id}>
        <circle cx={x} cy={y} r={17} fill="none" stroke="#fff" strokeWidth={5} opacity={0.8} />
        <circle cx={x} cy={y} r={17} fill="none" stroke="#111" strokeWidth={2} />
        <text
          x={x}
          y={y + 34}
          textAnchor="middle"
          fontSize={13}
          fontWeight={700}
          fill="#111"
          stroke="#fff"
          strokeWidth={4}
          paintOrder="stroke"
        >
          {placeText(xMm, units)}
        </text>
      </g>
    );
  });
}
