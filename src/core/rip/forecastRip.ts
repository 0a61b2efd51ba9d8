import type { ForecastRip } from '../results/forecastResult.js';
import type { SeamResult } from '../results/scoreResult.js';
import { seamFrame } from '../seam/seamFrame.js';
import { seamResult } from '../seam/seamResult.js';
import { bestSlide, slidesByAngle } from './bestSlide.js';
import { type ForecastLines, reachOfCut } from './forecastLines.js';
import { jointByAngle } from './jointByAngle.js';
import { ripIsLeftOut } from './leftOutParts.js';
import { isGain } from './railSlides.js';
import { segmentVisibility } from './segmentVisibility.js';
import { withLeftOutWindows } from './withLeftOutWindows.js';

/** A forecast rip, and the joint as a score of the glued panel would list it. */
export interface RipForecast {
  readonly rip: ForecastRip;
  readonly seam: SeamResult;
}

const leftOutNote = 'It runs through an area that you left out; what is seen there is not judged.';

const whole = [0, Number.POSITIVE_INFINITY] as const;

/**
 * One rip in full: visibility by picture with its stretches and the distance where it vanishes,
 * the closed form beside it, and the best slide within the spare length.
 *
 * @param yMm middle of what is lost, mm from the top. @param atMm where the joint lies on the
 *   panel glued up again. @param spareMm longest slide either way.
 */
export function forecastRip(
  lines: ForecastLines,
  yMm: number,
  lossMm: number,
  spareMm: number,
  atMm: number,
): RipForecast {
  const { rip, distanceMm, widthMm, heightMm } = lines;
  const [a, b] = [yMm - lossMm / 2, yMm + lossMm / 2];
  const reach = reachOfCut(a, b, heightMm);
  const own = rip.own(a, b, reach);
  const joint = rip.joint(a, b, 0);
  const byAngle = jointByAngle(joint, own, lossMm, 0, distanceMm);
  const line = { x1Mm: 0, y1Mm: atMm, x2Mm: widthMm, y2Mm: atMm };
  const told = seamResult(
    {
      ...{
        id: `rip ${yMm.toFixed(1)} mm from the top`,
        found: 'placed',
        p: null,
        implied: false,
        line,
      },
      ...{ frame: seamFrame(line), seam: rip.measured(a, b, 0), own: rip.ownMeasured(a, b, reach) },
    },
    distanceMm,
  );
  const seam = { ...told, windows: withLeftOutWindows(told.windows, joint.atMm) };
  const vAt = (slideMm: number) =>
    segmentVisibility(rip.joint(a, b, slideMm).sums, own, ...whole).v;
  const slides = slidesByAngle(joint.grain, lossMm, spareMm, distanceMm);
  const found = bestSlide((mm) => (vAt(mm) ?? 0) ** 3, spareMm, slides);
  const bestSlideMm = isGain(found) ? found.slideMm : 0;
  const { v } = seam.visibility;
  return {
    seam,
    rip: {
      yMm,
      visibility: seam.visibility,
      vByAngle: byAngle.v,
      bestSlideMm: v === null ? null : bestSlideMm,
      vAtBestSlide: v === null ? null : vAt(bestSlideMm),
      slidesByAngleMm: slides,
      windows: seam.windows.map((window) => ({
        ...window,
        vByAngle: byAngle.windows[joint.atMm.indexOf(window.atMm)] ?? null,
      })),
      // What a finished joint lost is no news of one that is still to be cut.
      notes: [
        ...seam.notes.filter((note) => !/\blost\b|\bslide\b/i.test(note)),
        ...(ripIsLeftOut(lines, a, b) ? [leftOutNote] : []),
      ],
    },
  };
}
