import type { Box } from '../draw/box.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { justVisibleLine } from './justVisibleLine.js';
import { numberTag } from './numberTag.js';
import type { ScoreFrame } from './scoreFrame.js';
import { seamStretches } from './seamStretches.js';
import { stripGround } from './stripGround.js';
import { stripProfile } from './stripProfile.js';

const tagRadiusPx = 8.5;

/** The narrow strip beside the panel for one line of crosscuts: V at the same height as on the wood. */
export function crosscutRail(
  seams: readonly PlacedSeam[],
  rail: Box,
  { panel, scale, railStepPx }: ScoreFrame,
  theme: Theme,
  hatchId: string,
): Piece {
  // Reading down: the foot at the rail's left edge, growing to the right.
  const turned = (yMm: number, way: 1 | -1) =>
    `translate(${px(rail.x)} ${px(panel.y + yMm * scale)}) rotate(90) scale(${way} 1)`;
  const strips = seams.map(({ seam }) => {
    const { y1Mm, y2Mm } = seam.line;
    const lengthPx = Math.abs(y2Mm - y1Mm) * scale;
    const ground = stripGround(lengthPx, 5, railStepPx, theme);
    const line = justVisibleLine(lengthPx, railStepPx, theme);
    const profile = stripProfile(
      seamStretches(seam),
      scale,
      railStepPx,
      hatchId,
      paint(theme, 'stroke', 'quiet'),
    );
    return `<g transform="${turned(y1Mm, y2Mm < y1Mm ? -1 : 1)}">${ground}${profile}${line}</g>`;
  });
  let freeFromPx = 0;
  const tags = seams.flatMap(({ seam, number }) => {
    const topPx = panel.y + Math.min(seam.line.y1Mm, seam.line.y2Mm) * scale;
    const centre = { x: rail.x + tagRadiusPx, y: topPx - tagRadiusPx - 4 };
    // Pieces of a line too short for their numbers keep them on the wood.
    if (centre.y - tagRadiusPx < freeFromPx) return [];
    freeFromPx = centre.y + tagRadiusPx + 2;
    return [numberTag(number, seam.found, centre, tagRadiusPx)];
  });
  return joinPieces([{ svg: strips.join(''), labels: [] }, ...tags]);
}
