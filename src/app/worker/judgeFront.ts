import type { ForecastLines } from '../../core/rip/forecastLines.js';
import { endSlides } from '../../core/rip/frontCut.js';
import { type FrontSegment, frontSegments } from '../../core/rip/frontSegments.js';
import { placementCost, segmentCost } from '../../core/rip/placementCost.js';
import { ripStepMm } from '../../core/rip/ripCurve.js';
import type { FrontAnswer, FrontQuestion } from './frontMessages.js';

/**
 * What the joints and reveals of a front would show, on lines of the panel that are read once and
 * kept. A rough answer stands at most a millimetre beside the place that was asked for, on the
 * lines that the rip curve has read already; an exact one is the forecast's own.
 */
export function judgeFront(lines: ForecastLines, question: FrontQuestion): FrontAnswer {
  const { place, loss, ends, rough } = question;
  const slides = endSlides(ends, loss.kerfMm);
  const judged = rough
    ? frontSegments(place, loss, slides, lines.widthMm).map((segment) => ({
        segment,
        ...segmentCost(lines, place, snapped(segment)),
      }))
    : placementCost(lines.asScored, place, loss, slides).segments;
  const segments = judged.map(({ segment, v, cue }) => ({ ...segment, v, cue }));
  return { question, segments, cost: segments.reduce((sum, { v }) => sum + (v ?? 0) ** 3, 0) };
}

function snapped(segment: FrontSegment): FrontSegment {
  const etaAMm = Math.round(segment.etaAMm / ripStepMm) * ripStepMm;
  return { ...segment, etaAMm, etaBMm: etaAMm + segment.etaBMm - segment.etaAMm };
}
