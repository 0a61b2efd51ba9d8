import type { ComparedCandidate, CompareResult } from '../../core/results/compareResult.js';
import { hatchPattern } from '../draw/hatchPattern.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import { pictureSvg } from '../draw/pictureSvg.js';
import type { Piece } from '../draw/piece.js';
import { textPiece } from '../draw/textPiece.js';
import type { Theme } from '../draw/theme.js';
import { themes } from '../draw/themes.js';
import { wrapText } from '../draw/wrapText.js';
import { wordOfV } from '../forecast/wordOfV.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { cannotTellLook } from '../ramp/visibilityRamp.js';
import { levelSwatch } from '../score/levelSwatch.js';
import { scaleLegend } from '../score/scaleLegend.js';
import { type ScoreFrame, scoreFrame } from '../score/scoreFrame.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { photoName } from '../words/photoName.js';
import { candidateStrip } from './candidateStrip.js';
import { headlineOfCompare } from './headlineOfCompare.js';
import { reasonText } from './reasonText.js';

/** How a comparison is drawn. */
export interface CompareDrawing extends LengthUnits {
  /** The candidates' faces in the result's order: data URLs. */
  readonly photoHrefs?: readonly string[];
  /** Instead of them: `<image>`s of 1 x 1 in the page, named this and the rank. */
  readonly photoId?: string;
  readonly widthPx?: number;
  readonly theme?: 'bright' | 'dark';
  readonly headline?: boolean;
  readonly idPrefix?: string;
}

/** A drawing and its width. */
export interface ComparePicture {
  readonly svg: string;
  readonly widthPx: number;
  readonly labels: Piece['labels'];
}

const swatchPx = 34;

/**
 * Draws the candidates at one scale, the best on top: on each the best place for the front and
 * the best rip, above it its rank, how it would look and what decides.
 */
export function comparePicture(result: CompareResult, drawing: CompareDrawing): ComparePicture {
  const wantedPx = Math.min(2400, Math.max(320, drawing.widthPx ?? 1160));
  const theme = themes[drawing.theme ?? 'bright'];
  const hatchId = `${drawing.idPrefix ?? 'compare'}-hatch`;
  const widest = Math.max(...result.candidates.map(({ widthMm }) => widthMm));
  const frame = scoreFrame({ widthMm: widest, heightMm: 1, pxPerMm: 1 }, wantedPx, 0, 0);
  const headline = headlineOfCompare(result);
  const pieces: Piece[] = [];
  let y = frame.marginPx;
  if (drawing.headline !== false) {
    const { titlePx: sizePx } = frame;
    y = lines(pieces, headline, y, { sizePx, bold: true, role: 'ink' }, frame, theme) + 6;
  }
  for (const [i, candidate] of result.candidates.entries()) {
    y = heading(pieces, result, candidate, y, frame, theme, hatchId);
    const strip = candidateStrip(candidate, i, y, frame, drawing);
    pieces.push({ svg: strip.svg, labels: [] });
    y = strip.bottomPx + 20;
  }
  const withUntold = result.candidates.some(({ vMedian }) => vMedian === null);
  const wishes = { justVisible: '', withUntold, withPlaced: false };
  const legend = scaleLegend(y - 8, frame, wishes, theme, hatchId);
  const all = joinPieces([...pieces, legend.piece]);
  const [widthPx, heightPx] = [frame.widthPx, legend.bottomPx + frame.marginPx / 2];
  const svg = pictureSvg({ widthPx, heightPx }, headline, hatchPattern(hatchId), all.svg, theme);
  return { svg, widthPx, labels: all.labels };
}

/** Rank, name and look beside a sample of the scale, what decides below. */
function heading(
  pieces: Piece[],
  result: CompareResult,
  candidate: ComparedCandidate,
  topPx: number,
  frame: ScoreFrame,
  theme: Theme,
  hatchId: string,
): number {
  const { marginPx, textPx, smallPx, bandPx, widthPx } = frame;
  const v = result.front ? (candidate.front?.worst.v ?? null) : candidate.vMedian;
  const level = levelOfVisibility(v);
  const look = wordOfV(v) ?? cannotTellLook.word;
  const thing = result.front ? 'worst joint' : 'typical rip';
  const value = v === null ? '' : `, V ${v.toFixed(1)}`;
  const y = topPx + textPx;
  const swatchY = y - 0.36 * textPx + bandPx / 2;
  pieces.push({
    svg: levelSwatch(level, marginPx, swatchY, swatchPx, bandPx, hatchId),
    labels: [],
  });
  const text = `${candidate.rank}. ${photoName(candidate.photo)}: ${thing} ${look}${value}`;
  const wrapped = wrapText(text, textPx, widthPx - 2 * marginPx - swatchPx - 8, true);
  wrapped.forEach((line, i) => {
    pieces.push(
      textPiece({
        ...{ x: marginPx + swatchPx + 8, y: y + 1.3 * i * textPx, text: line, sizePx: textPx },
        ...{ bold: true, fill: paint(theme, 'fill', 'ink') },
      }),
    );
  });
  const bottom = y + (1.3 * wrapped.length - 1) * textPx + 0.2 * textPx;
  const why = reasonText(result, candidate);
  if (!why) return bottom + 6;
  return (
    lines(pieces, why, bottom, { sizePx: smallPx, bold: false, role: 'quiet' }, frame, theme) + 3
  );
}

/** A wrapped text; returns where it ends. */
function lines(
  pieces: Piece[],
  text: string,
  topPx: number,
  { sizePx, bold, role }: { sizePx: number; bold: boolean; role: 'ink' | 'quiet' },
  { marginPx, widthPx }: ScoreFrame,
  theme: Theme,
): number {
  const wrapped = wrapText(text, sizePx, widthPx - 2 * marginPx, bold);
  wrapped.forEach((line, i) => {
    const y = topPx + (1 + 1.35 * i) * sizePx;
    const fill = paint(theme, 'fill', role);
    pieces.push(textPiece({ x: marginPx, y, text: line, sizePx, bold, fill }));
  });
  return topPx + 1.35 * wrapped.length * sizePx;
}
