import type { ArrangedBoard, ArrangeResult } from '../../core/results/arrangeResult.js';
import { escapeXml } from '../draw/escapeXml.js';
import { hatchPattern } from '../draw/hatchPattern.js';
import { joinPieces } from '../draw/joinPieces.js';
import { pictureSvg } from '../draw/pictureSvg.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';
import { themes } from '../draw/themes.js';
import { titlePiece } from '../draw/titlePiece.js';
import { lengthRule } from '../score/lengthRule.js';
import { scaleLegend } from '../score/scaleLegend.js';
import { type ScoreFrame, scoreFrame } from '../score/scoreFrame.js';
import type { ScorePicture } from '../score/scorePicture.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { arrangedLayout, type LaidBoard } from './arrangedLayout.js';
import { boardTag } from './boardTag.js';
import { headlineOfArrange } from './headlineOfArrange.js';
import { jointBand, jointNotes } from './jointBand.js';

/** How an arranged panel is drawn. */
export interface ArrangeDrawing extends LengthUnits {
  /** Photos of the faces that show, in the result's order: data URLs. */
  readonly photoHrefs?: readonly string[];
  /** Instead of them: `<image>`s of 1 x 1 in the page, named this and the place from 1. */
  readonly photoId?: string;
  /** What jointing takes from each edge, mm: cut off the pictures. */
  readonly jointMm: number;
  readonly widthPx?: number;
  readonly theme?: 'bright' | 'dark';
  readonly headline?: boolean;
  readonly idPrefix?: string;
}

/**
 * Draws the panel that the boards make: every board as it lies, its number and whether it is
 * turned, and beside each joint a band in the scale's colour and shape.
 */
export function arrangePicture(result: ArrangeResult, drawing: ArrangeDrawing): ScorePicture {
  const wantedPx = Math.min(2400, Math.max(320, drawing.widthPx ?? 1160));
  const theme = themes[drawing.theme ?? 'bright'];
  const prefix = drawing.idPrefix ?? 'arrange';
  const hatchId = `${prefix}-hatch`;
  const { boards, ...size } = arrangedLayout(result);
  const panel = { widthMm: size.lengthMm, heightMm: size.widthMm, pxPerMm: 1 };
  const rails = wantedPx < 560 ? 0 : wantedPx < 900 ? 5 : 4;
  const headline = headlineOfArrange(result);
  const bare = scoreFrame(panel, wantedPx, 0, rails);
  const title = drawing.headline === false ? null : titlePiece(headline, bare, theme);
  const frame = scoreFrame(panel, wantedPx, (title?.bottomPx ?? 0) + 14, rails);
  const wood = boards.map((board, i) => woodOf(board, result.order[i]!, i, frame, drawing, prefix));
  const bands = result.joints.map((joint, i) => jointBand(joint, boards, i, frame, hatchId));
  const tags = boards.map((board, i) => boardTag(board, result.order[i]!, frame));
  const notes = rails > 0 ? [jointNotes(result, boards, frame, theme)] : [];
  const below = belowPanel(result, frame, drawing, theme, hatchId);
  const all = joinPieces([
    title?.piece ?? { svg: '', labels: [] },
    { svg: wood.join('') + bands.join(''), labels: [] },
    ...tags,
    ...notes,
    below.piece,
  ]);
  const [widthPx, heightPx] = [frame.widthPx, below.bottomPx + frame.marginPx / 2];
  const svg = pictureSvg({ widthPx, heightPx }, headline, hatchPattern(hatchId), all.svg, theme);
  return { svg, widthPx, heightPx, labels: all.labels, panel: frame.panel };
}

/** A board's photograph as it lies, its jointed edges cut off. */
function woodOf(
  board: LaidBoard,
  { turned }: ArrangedBoard,
  i: number,
  { panel, scale }: ScoreFrame,
  { photoHrefs, photoId, jointMm }: ArrangeDrawing,
  prefix: string,
): string {
  const x = panel.x + board.leftMm * scale;
  const y = panel.y + board.topMm * scale;
  const [width, height] = [board.lengthMm * scale, board.widthMm * scale];
  const place = `x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}"`;
  const ground = `<rect ${place} fill="#b9b9bb"/>`;
  const href = photoHrefs?.[i];
  if (!photoId && !href) return ground;
  const full = height + 2 * jointMm * scale;
  const turn = turned ? ` rotate(180) translate(${px(-width)} ${px(-full)})` : '';
  const put = `translate(${px(x)} ${px(y - jointMm * scale)})${turn} scale(${width.toFixed(4)} ${full.toFixed(4)})`;
  const image = photoId
    ? `<use href="#${escapeXml(photoId)}${i + 1}" transform="${put}"/>`
    : `<image href="${escapeXml(href!)}" width="1" height="1" preserveAspectRatio="none" transform="${put}"/>`;
  const clipId = `${prefix}-board-${i + 1}`;
  return `${ground}<clipPath id="${clipId}"><rect ${place}/></clipPath><g clip-path="url(#${clipId})">${image}</g>`;
}

function belowPanel(
  { joints }: ArrangeResult,
  frame: ScoreFrame,
  drawing: ArrangeDrawing,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { panel, smallPx } = frame;
  const withUntold = joints.some(({ v }) => v === null);
  const wishes = { justVisible: '', withUntold, withPlaced: false };
  const legend = scaleLegend(panel.y + panel.height + 20 + smallPx, frame, wishes, theme, hatchId);
  return {
    piece: joinPieces([lengthRule(frame, drawing, theme), legend.piece]),
    bottomPx: legend.bottomPx,
  };
}
