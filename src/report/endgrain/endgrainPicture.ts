import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import { pictureSvg } from '../draw/pictureSvg.js';
import type { Piece } from '../draw/piece.js';
import { themes } from '../draw/themes.js';
import { titlePiece } from '../draw/titlePiece.js';
import { lengthRule } from '../score/lengthRule.js';
import { panelPhoto } from '../score/panelPhoto.js';
import type { ScoreDrawing } from '../score/scoreDrawing.js';
import { scoreFrame } from '../score/scoreFrame.js';
import type { ScorePicture } from '../score/scorePicture.js';
import { angleStrip } from './angleStrip.js';
import { cutLegend, cutPatterns } from './cutLegend.js';
import { describeEndgrain } from './describeEndgrain.js';
import { endMarks } from './endMarks.js';

/** How an end is drawn, as a score is. */
export type EndgrainDrawing = Pick<
  ScoreDrawing,
  'units' | 'denominator' | 'photoHref' | 'photoId' | 'widthPx' | 'theme' | 'headline' | 'idPrefix'
>;

/**
 * The end as one SVG: the answer as a sentence, the photo with rings and pith drawn on it, and
 * under it, at the same x, the ring angle across the width in the colours of its cut.
 */
export function endgrainPicture(result: EndgrainResult, drawing: EndgrainDrawing): ScorePicture {
  const wantedPx = Math.min(2400, Math.max(320, drawing.widthPx ?? 1160));
  const theme = themes[drawing.theme ?? 'bright'];
  const prefix = drawing.idPrefix ?? 'end';
  const { headline } = describeEndgrain(result, drawing);
  const bare = scoreFrame(result.panel, wantedPx, 0, 0);
  const title = drawing.headline === false ? null : titlePiece(headline, bare, theme);
  const above = roomForPith(result, 'above') * bare.textPx * 1.8;
  const frame = scoreFrame(result.panel, wantedPx, (title?.bottomPx ?? 0) + 12 + above, 0);
  const marks = endMarks(result, frame, drawing, theme, prefix);
  let y = frame.panel.y + frame.panel.height + 22 + frame.smallPx;
  const pieces: Piece[] = [
    title?.piece ?? { svg: '', labels: [] },
    { svg: panelPhoto(drawing, frame), labels: [] },
    marks,
    lengthRule(frame, drawing, theme),
  ];
  y += roomForPith(result, 'below') * frame.textPx * 1.6;
  if (result.ringAngle.length > 0) {
    const strip = angleStrip(result, y, frame, theme, prefix);
    const legend = cutLegend(result, strip.bottomPx + 10, frame, theme, prefix);
    pieces.push(strip.piece, legend.piece);
    y = legend.bottomPx;
  }
  const all = joinPieces(pieces);
  const heightPx = y + frame.marginPx / 2;
  const { widthPx } = frame;
  const svg = pictureSvg({ widthPx, heightPx }, headline, cutPatterns(prefix), all.svg, theme);
  return { svg, widthPx, heightPx, labels: all.labels, panel: frame.panel };
}

/** A line of words beside the photo for a pith that lies off it. */
function roomForPith({ pith, panel }: EndgrainResult, side: 'above' | 'below'): 0 | 1 {
  if (!pith) return 0;
  const off = side === 'above' ? pith.yMm < 0 : pith.yMm > panel.heightMm;
  return off ? 1 : 0;
}
