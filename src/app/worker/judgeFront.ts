import { type ForecastLines, reachOfCut } from '../../core/rip/forecastLines.js';
import { endSlides } from '../../core/rip/frontCut.js';
import { frontSegments } from '../../core/rip/frontSegments.js';
import { ripStepMm } from '../../core/rip/ripCurve.js';
import { segmentVisibility } from '../../core/rip/segmentVisibility.js';
import type { FrontAnswer, FrontQuestion, JudgedSegment } from './frontMessages.js';

/**
 * What the joints round a front would show, from lines of the panel that are read once and kept.
 * A rough answer is at most a millimetre beside the place that was asked for.
 */
export function judgeFront(lines: ForecastLines, question: FrontQuestion): FrontAnswer {
  const { place, loss, ends, rough } = question;
  const all = frontSegments(place, loss, endSlides(ends, loss.kerfMm), lines.widthMm);
  const segments = all.map((segment): JudgedSegment => {
    const { kind, fromMm, toMm, slideMm } = segment;
    const etaAMm = rough ? Math.round(segment.etaAMm / ripStepMm) * ripStepMm : segment.etaAMm;
    const etaBMm = etaAMm + segment.etaBMm - segment.etaAMm;
    const across = kind === 'rip' ? lines.heightMm : lines.widthMm;
    const way = kind === 'rip' ? lines.rip : lines.crosscut;
    const joint = way.joint(etaAMm, etaBMm, slideMm);
    const own = way.own(etaAMm, etaBMm, reachOfCut(etaAMm, etaBMm, across));
    return { ...segment, ...segmentVisibility(joint.sums, own, fromMm, toMm) };
  });
  const cost = segments.filter(({ glued }) => glued).reduce((sum, { v }) => sum + (v ?? 0) ** 3, 0);
  return { question, segments, cost };
}
