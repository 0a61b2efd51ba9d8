import { firstFreeBox } from '../draw/firstFreeBox.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Label, Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeText } from '../words/placeText.js';
import { flaggedPlaces } from './flaggedPlaces.js';
import { justVisibleLine } from './justVisibleLine.js';
import { noneFoundWords } from './noneFoundWords.js';
import type { ScoreFrame } from './scoreFrame.js';
import { seamStretches } from './seamStretches.js';
import { stepsOfV } from './stepsOfV.js';
import { stripGround } from './stripGround.js';
import { stripProfile } from './stripProfile.js';

/**
 * The strip under the panel for one line of joints: V at the same x as on the wood, and under it
 * the places to look at.
 * @param topPx where it may begin
 */
export function jointStrip(
  seams: readonly PlacedSeam[],
  topPx: number,
  frame: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { panel, scale, laneStepPx, smallPx } = frame;
  // A quiet joint needs no room for loudness: the strip is as high as its hill.
  const hills = seams.flatMap(({ seam }) => seamStretches(seam).map(({ v }) => stepsOfV(v)));
  const steps = Math.max(2.2, ...hills);
  const baseY = topPx + steps * laneStepPx;
  const profiles = seams.map(({ seam }) => {
    const { x1Mm, x2Mm } = seam.line;
    const way = x2Mm < x1Mm ? -1 : 1;
    const profile = stripProfile(
      seamStretches(seam),
      scale,
      laneStepPx,
      hatchId,
      paint(theme, 'stroke', 'quiet'),
    );
    return `<g transform="translate(${px(panel.x + x1Mm * scale)} ${px(baseY)}) scale(${way} 1)">${profile}</g>`;
  });
  const marks = worstMarks(seams, baseY, frame, units, theme);
  const none = noneFoundWords(seams, baseY, frame, theme);
  const ground = stripGround(panel.width, steps, laneStepPx, theme);
  const svg = `<g transform="translate(${px(panel.x)} ${px(baseY)})">${ground}</g>${profiles.join('')}<g transform="translate(${px(panel.x)} ${px(baseY)})">${justVisibleLine(panel.width, laneStepPx, theme)}</g>`;
  const rowPx = marks.labels.length > 0 ? 1.5 * smallPx + 4 : 3;
  return { piece: joinPieces([{ svg, labels: [] }, none, marks]), bottomPx: baseY + rowPx };
}

/** A pointer up at each worst place and its distance from the left end beside it. */
function worstMarks(
  seams: readonly PlacedSeam[],
  baseY: number,
  { panel, scale, smallPx, widthPx }: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
): Piece {
  const taken: Label[] = [];
  const pieces: Piece[] = [];
  const most = widthPx < 560 ? 2 : 3;
  const y = baseY + 4 + 1.05 * smallPx;
  const bounds = { x: panel.x, y: baseY, width: panel.width, height: 2 * smallPx + 6 };
  for (const { seam } of seams) {
    for (const { xMm } of flaggedPlaces(seam, most)) {
      const x = panel.x + xMm * scale;
      const text = placeText(xMm, units);
      const width = textWidthPx(text, smallPx);
      const size = { y: y - 0.93 * smallPx, width: width + 14, height: 1.2 * smallPx };
      const wishes = [
        { x: x - 6, ...size },
        { x: x - width - 8, ...size },
      ];
      const box = firstFreeBox(wishes, taken, bounds, 4);
      if (!box) continue;
      const right = box.x === wishes[0]!.x;
      const words = textPiece({
        x: right ? x + 7 : x - 7,
        y,
        text,
        sizePx: smallPx,
        anchor: right ? 'start' : 'end',
        fill: paint(theme, 'fill', 'ink'),
      });
      const mark = `<path d="M${px(x)} ${px(baseY + 2)}l4.5 8h-9Z" ${paint(theme, 'fill', 'ink')}/>`;
      taken.push({ ...box, text });
      pieces.push({ svg: mark + words.svg, labels: [{ ...box, text }] });
    }
  }
  return joinPieces(pieces);
}
