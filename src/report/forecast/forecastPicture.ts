import type { ForecastResult } from '../../core/results/forecastResult.js';
import { hatchPattern } from '../draw/hatchPattern.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import { pictureSvg } from '../draw/pictureSvg.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import type { Theme } from '../draw/theme.js';
import { themes } from '../draw/themes.js';
import { titlePiece } from '../draw/titlePiece.js';
import { wrapText } from '../draw/wrapText.js';
import { lengthRule } from '../score/lengthRule.js';
import { panelPhoto } from '../score/panelPhoto.js';
import { railCurve } from '../score/railCurve.js';
import { scaleLegend } from '../score/scaleLegend.js';
import { type ScoreFrame, scoreFrame } from '../score/scoreFrame.js';
import type { ScorePicture } from '../score/scorePicture.js';
import { seamBand } from '../score/seamBand.js';
import { seamTrack } from '../score/seamTrack.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';
import { byAngleLine } from './byAngleLine.js';
import { cutMarks } from './cutMarks.js';
import { drawnCurve } from './drawnCurve.js';
import type { ForecastDrawing } from './forecastDrawing.js';
import { headlineOfForecast } from './headlineOfForecast.js';
import { leftOutMarks } from './leftOutMarks.js';
import { ripsApart, uncutSeams } from './uncutSeams.js';

/** Three rips, 2 mm apart. */
const averagedMm = 6.35;
const keyIndentPx = 37;
const leftOutKey =
  'crossed out on the panel: an area that was left out; what a cut shows there is not judged';
/** Room kept right of the panel for the curve and the words beside it, in a score's rails. */
const railsOfRoom = 4;
/** The curve is what this picture is about: its rail is wider than a score's, where there is room. */
const railWiderBy = (widthPx: number) => (widthPx < 560 ? 1.5 : widthPx < 900 ? 2 : 2.4);

/**
 * Draws a forecast: the uncut panel with the wood that the cuts would take and a band beside each
 * joint they would make; right of it, at the same height, the cost of every rip: as a hill by
 * picture, as a thin line by angle.
 */
export function forecastPicture(result: ForecastResult, drawing: ForecastDrawing): ScorePicture {
  const wantedPx = Math.min(2400, Math.max(320, drawing.widthPx ?? 1160));
  const theme = themes[drawing.theme ?? 'bright'];
  const hatchId = `${drawing.idPrefix ?? 'forecast'}-hatch`;
  const headline = headlineOfForecast(result, drawing);
  const bare = scoreFrame(result.panel, wantedPx, 0, railsOfRoom);
  const title = drawing.headline === false ? null : titlePiece(headline, bare, theme);
  const frame = scoreFrame(result.panel, wantedPx, (title?.bottomPx ?? 0) + 14, railsOfRoom);
  const bands = uncutSeams(result).map((seam) =>
    seamBand(seam, seamTrack(seam.line, frame), frame, hatchId),
  );
  const photo = panelPhoto(drawing, frame);
  const below = belowPanel(result, frame, drawing, theme, hatchId);
  const all = joinPieces([
    title?.piece ?? { svg: '', labels: [] },
    {
      svg: [photo, leftOutMarks(result, frame), cutMarks(result, frame), ...bands].join(''),
      labels: [],
    },
    rail(result, frame, drawing, theme, hatchId),
    below.piece,
  ]);
  const [widthPx, heightPx] = [frame.widthPx, below.bottomPx + frame.marginPx / 2];
  const svg = pictureSvg({ widthPx, heightPx }, headline, hatchPattern(hatchId), all.svg, theme);
  return { svg, widthPx, heightPx, labels: all.labels, panel: frame.panel };
}

function rail(
  result: ForecastResult,
  frame: ScoreFrame,
  drawing: ForecastDrawing,
  theme: Theme,
  hatchId: string,
): Piece {
  const { panel, scale, smallPx } = frame;
  const { x, y } = frame.rails[0];
  const stepPx = railWiderBy(frame.widthPx) * frame.railStepPx;
  const marks = marksOf(result).map((yMm) => ({ yMm, text: placeText(yMm, drawing) }));
  const curve = { heightMm: result.panel.heightMm, scale, x, y: panel.y, stepPx };
  const hill = railCurve(
    { ...curve, samples: drawnCurve(result.curve), marks, typePx: smallPx },
    theme,
    hatchId,
  );
  return {
    ...hill,
    svg: hill.svg + byAngleLine(result.curve, { x, y, scale, stepPx }, theme),
  };
}

/** Heights to name beside the rail, the most wanted first: the cuts, the quietest and the loudest rip. */
function marksOf(result: ForecastResult): number[] {
  const { placements, lossMm, summary, curve } = result;
  const [best] = placements;
  const front = best ? [best.yMm - lossMm / 2, best.yMm + best.heightMm + lossMm / 2] : [];
  const loudest = curve.reduce((a, b) => ((b.v ?? 0) > (a.v ?? 0) ? b : a), curve[0]);
  return [
    ...front,
    ...ripsApart(result).map(({ yMm }) => yMm),
    ...(summary.bestYMm === null ? [] : [summary.bestYMm]),
    ...(loudest && (loudest.v ?? 0) >= 1 ? [loudest.yMm] : []),
  ];
}

function belowPanel(
  result: ForecastResult,
  frame: ScoreFrame,
  drawing: ForecastDrawing,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { panel, marginPx, smallPx, rails, widthPx } = frame;
  const rule = lengthRule(frame, drawing, theme);
  const fill = paint(theme, 'fill', 'quiet');
  const y = panel.y + panel.height + 8 + smallPx;
  const under = textPiece({ x: rails[0].x, y, text: 'a rip here', sizePx: smallPx, fill });
  const legend = scaleLegend(
    panel.y + panel.height + 22 + smallPx,
    frame,
    {
      justVisible: `just visible from ${viewingDistanceText(result.distanceMm, drawing)}`,
      withUntold: true,
      withPlaced: false,
    },
    theme,
    hatchId,
  );
  const keyText = `by the angle of the grain alone; the hill is what the picture says, averaged over ${smallLengthText(averagedMm, drawing)}`;
  const leftOutText = result.leftOut.length > 0 ? leftOutKey : '';
  const lines = [keyText, leftOutText].flatMap((words) =>
    wrapText(words, smallPx, widthPx - 2 * marginPx - keyIndentPx),
  );
  const keys = lines.map((text, i) =>
    textPiece({
      ...{ x: marginPx + keyIndentPx, y: legend.bottomPx + (1.3 + 1.35 * i) * smallPx },
      ...{ text, sizePx: smallPx, fill: paint(theme, 'fill', 'ink') },
    }),
  );
  const lineY = legend.bottomPx + 0.95 * smallPx;
  const sample = `<path d="M${px(marginPx)} ${px(lineY)}l10 -3l10 5l10 -2" fill="none" ${paint(theme, 'stroke', 'ink')} stroke-width="1"/>`;
  return {
    piece: joinPieces([rule, under, legend.piece, { svg: sample, labels: [] }, ...keys]),
    bottomPx: legend.bottomPx + (0.9 + 1.35 * keys.length) * smallPx,
  };
}
