import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import { wrapText } from '../draw/wrapText.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { cannotTellLook } from '../ramp/visibilityRamp.js';
import { capitalise } from '../words/capitalise.js';
import { cueText } from '../words/cueText.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeText } from '../words/placeText.js';
import { flaggedPlaces } from './flaggedPlaces.js';
import { levelSwatch } from './levelSwatch.js';
import { numberTag } from './numberTag.js';
import type { ScoreFrame } from './scoreFrame.js';

interface Wording {
  readonly name: string;
  readonly word: string;
  readonly detail: string;
}

const swatchPx = 26;
const tagRadiusPx = 8.5;

/**
 * One line of headings: number, name, swatch, word, worst place, for each seam of a row.
 * On a narrow page the worst place goes on lines of its own, and each seam of a row on its line.
 * @param topPx where it may begin
 * @param roomPx width to fill from the left margin
 */
export function seamHeading(
  seams: readonly PlacedSeam[],
  topPx: number,
  roomPx: number,
  frame: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { marginPx, textPx, smallPx, bandPx } = frame;
  const full = seams.map((placed) => wordingOf(placed, units));
  const widthOf = (wordings: readonly Wording[]) =>
    wordings.reduce((sum, one) => sum + wordingWidth(one, textPx), 0);
  const fits = rungs.find((rung) => widthOf(full.map(rung)) <= roomPx);
  if (!fits && seams.length > 1) return stacked(seams, topPx, roomPx, frame, units, theme, hatchId);
  const fitting = fits ?? rungs.at(-1)!;
  const y = topPx + 1.1 * textPx;
  let x = marginPx;
  const pieces = seams.map((placed, index) => {
    const wording = fitting(full[index]!);
    const start = x;
    x += wordingWidth(wording, textPx);
    return headingOf(placed, wording, start, y, textPx, bandPx, theme, hatchId);
  });
  const alone = seams.length === 1 && fitting !== rungs[0] ? full[0]!.detail : '';
  const lines = alone ? wrapText(capitalise(alone), smallPx, roomPx) : [];
  const fill = paint(theme, 'fill', 'quiet');
  lines.forEach((text, index) => {
    const lineY = y + (index + 1) * 1.4 * smallPx + 2;
    pieces.push(textPiece({ x: marginPx, y: lineY, text, sizePx: smallPx, fill }));
  });
  return {
    piece: joinPieces(pieces),
    bottomPx: topPx + 1.75 * textPx + lines.length * 1.4 * smallPx,
  };
}

/** Ever shorter ways to word a heading. */
const rungs: readonly ((full: Wording) => Wording)[] = [
  (full) => full,
  (full) => ({ ...full, detail: '' }),
];

function stacked(
  seams: readonly PlacedSeam[],
  topPx: number,
  ...rest: [number, ScoreFrame, LengthUnits, Theme, string]
): { readonly piece: Piece; readonly bottomPx: number } {
  let y = topPx;
  const pieces = seams.map((placed) => {
    const line = seamHeading([placed], y, ...rest);
    y = line.bottomPx;
    return line.piece;
  });
  return { piece: joinPieces(pieces), bottomPx: y };
}

function wordingOf({ seam, runs, name }: PlacedSeam, units: LengthUnits): Wording {
  const level = levelOfVisibility(seam.visibility.v);
  const worst = flaggedPlaces(seam, 1)[0];
  const placeMm = worst && (runs === 'along' ? worst.xMm : worst.yMm);
  const from = runs === 'along' ? 'from the left' : 'from the top';
  const facts = worst && { ...worst.window, cue: worst.window.cue ?? seam.visibility.cue };
  return {
    name: capitalise(name.replace(/ from the (top|left)$/, '')),
    word: seam.visibility.word ?? level?.word ?? cannotTellLook.word,
    detail:
      placeMm === undefined || !facts
        ? ''
        : `worst ${placeText(placeMm, units)} ${from}, where ${cueText(facts, units)}`,
  };
}

function wordingWidth({ name, word, detail }: Wording, sizePx: number): number {
  const part = (text: string, bold = false) => (text ? textWidthPx(text, sizePx, bold) + 8 : 0);
  return 2 * tagRadiusPx + 7 + part(name, true) + swatchPx + 7 + part(word) + part(detail) + 10;
}

function headingOf(
  { seam, number }: PlacedSeam,
  { name, word, detail }: Wording,
  startX: number,
  y: number,
  sizePx: number,
  bandPx: number,
  theme: Theme,
  hatchId: string,
): Piece {
  const centre = { x: startX + tagRadiusPx, y: y - 0.36 * sizePx };
  const pieces: Piece[] = [numberTag(number, seam.found, centre, tagRadiusPx)];
  let x = startX + 2 * tagRadiusPx + 7;
  const write = (text: string, role: 'ink' | 'quiet', bold = false) => {
    if (!text) return;
    pieces.push(textPiece({ x, y, text, sizePx, bold, fill: paint(theme, 'fill', role) }));
    x += textWidthPx(text, sizePx, bold) + 8;
  };
  write(name, 'ink', true);
  const level = levelOfVisibility(seam.visibility.v);
  const swatchY = y - 0.36 * sizePx + bandPx / 2;
  pieces.push({ svg: levelSwatch(level, x, swatchY, swatchPx, bandPx, hatchId), labels: [] });
  x += swatchPx + 7;
  write(word, 'ink');
  write(detail, 'quiet');
  return joinPieces(pieces);
}
