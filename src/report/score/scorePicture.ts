import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { Box } from '../draw/box.js';
import { hatchPattern } from '../draw/hatchPattern.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import { pictureSvg } from '../draw/pictureSvg.js';
import type { Label, Piece } from '../draw/piece.js';
import { textPiece } from '../draw/textPiece.js';
import type { Theme } from '../draw/theme.js';
import { themes } from '../draw/themes.js';
import { titlePiece } from '../draw/titlePiece.js';
import { headlineOfScore } from '../words/headlineOfScore.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeSeams } from '../words/placeSeams.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';
import { crosscutRail } from './crosscutRail.js';
import { grainStrokes } from './grainStrokes.js';
import { jointStrip } from './jointStrip.js';
import { lengthRule } from './lengthRule.js';
import { panelPhoto } from './panelPhoto.js';
import { scaleLegend } from './scaleLegend.js';
import type { ScoreDrawing } from './scoreDrawing.js';
import { type ScoreFrame, scoreFrame } from './scoreFrame.js';
import { seamHeading } from './seamHeading.js';
import { seamMarks } from './seamMarks.js';

/** A score's picture with its size and where its words stand. */
export interface ScorePicture {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly labels: readonly Label[];
  /** Where the panel lies in it. */
  readonly panel: Box;
}

/** Draws a score; `scoreSvg` is this without the geometry. */
export function scorePicture(result: ScoreResult, drawing: ScoreDrawing): ScorePicture {
  const wantedPx = Math.min(2400, Math.max(320, drawing.widthPx ?? 1160));
  const theme = themes[drawing.theme ?? 'bright'];
  const hatchId = `${drawing.idPrefix ?? 'score'}-hatch`;
  const placed = placeSeams(result);
  const joints = rowsOf(placed, 'along', 6);
  const crosscuts = rowsOf(placed, 'across', wantedPx < 560 ? 2 : 4);
  const headline = headlineOfScore(result, drawing);
  const bare = scoreFrame(result.panel, wantedPx, 0, crosscuts.length);
  const title = drawing.headline === false ? null : titlePiece(headline, bare, theme);
  const topPx = (title?.bottomPx ?? 0) + (crosscuts.length > 0 ? 26 : 12);
  const frame = scoreFrame(result.panel, wantedPx, topPx, crosscuts.length);
  const { widthPx } = frame;
  const marks = seamMarks(result, placed, frame, drawing, theme, hatchId);
  const grain = drawing.grain ? grainStrokes(drawing.grain, frame, marks.taken) : '';
  const below = belowPanel(placed, joints, crosscuts, frame, drawing, theme, hatchId);
  const rails = crosscuts.map((seams, i) =>
    crosscutRail(seams, frame.rails[i]!, frame, theme, hatchId),
  );
  const all = joinPieces([
    title?.piece ?? { svg: '', labels: [] },
    { svg: panelPhoto(drawing, frame) + grain, labels: [] },
    marks.piece,
    ...rails,
    below.piece,
  ]);
  const heightPx = below.bottomPx + frame.marginPx / 2;
  const svg = pictureSvg({ widthPx, heightPx }, headline, hatchPattern(hatchId), all.svg, theme);
  return { svg, widthPx, heightPx, labels: all.labels, panel: frame.panel };
}

/** Seams of one direction by their line, at most `most` lines: the plainest, in their order. */
function rowsOf(
  placed: readonly PlacedSeam[],
  runs: PlacedSeam['runs'],
  most: number,
): PlacedSeam[][] {
  const rows = new Map<number, PlacedSeam[]>();
  for (const one of placed.filter((seam) => seam.runs === runs)) {
    rows.set(one.row, [...(rows.get(one.row) ?? []), one]);
  }
  const plainness = (row: PlacedSeam[]) =>
    Math.max(...row.map((one) => one.seam.visibility.v ?? 0));
  const kept = [...rows.values()].sort((a, b) => plainness(b) - plainness(a)).slice(0, most);
  return kept.sort((a, b) => a[0]!.row - b[0]!.row);
}

function belowPanel(
  placed: readonly PlacedSeam[],
  joints: PlacedSeam[][],
  crosscuts: PlacedSeam[][],
  frame: ScoreFrame,
  drawing: ScoreDrawing,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { panel, widthPx, marginPx, smallPx } = frame;
  const roomPx = widthPx - 2 * marginPx;
  const pieces: Piece[] = [lengthRule(frame, drawing, theme)];
  let y = panel.y + panel.height + 18 + smallPx;
  const heading = (seams: PlacedSeam[]) => {
    const line = seamHeading(seams, y, roomPx, frame, drawing, theme, hatchId);
    pieces.push(line.piece);
    y = line.bottomPx;
  };
  for (const seams of joints) {
    heading(seams);
    const strip = jointStrip(seams, y, frame, drawing, theme, hatchId);
    pieces.push(strip.piece);
    y = strip.bottomPx + 8;
  }
  for (const seams of crosscuts) heading(seams);
  const hidden = placed.length - [...joints, ...crosscuts].flat().length;
  if (hidden > 0) {
    const text = `and ${hidden} more, quieter, marked on the wood only`;
    const fill = paint(theme, 'fill', 'quiet');
    pieces.push(textPiece({ x: marginPx, y: y + smallPx, text, sizePx: smallPx, fill }));
    y += 1.5 * smallPx;
  }
  const distance = drawing.distanceMm;
  const wishes = {
    justVisible:
      placed.length === 0
        ? ''
        : `just visible${distance === undefined ? '' : ` from ${viewingDistanceText(distance, drawing)}`}`,
    withUntold: placed.some(
      ({ seam }) => seam.visibility.v === null || seam.windows.some((window) => window.v === null),
    ),
    withPlaced: placed.some(({ seam }) => seam.found === 'placed'),
  };
  if (placed.length === 0) return { piece: joinPieces(pieces), bottomPx: y };
  const legend = scaleLegend(y + 6, frame, wishes, theme, hatchId);
  pieces.push(legend.piece);
  return { piece: joinPieces(pieces), bottomPx: legend.bottomPx };
}
