import { middleDirectionRad } from '../geometry/middleDirectionRad.js';
import type { LineMeasures, WindowMeasures } from './lineMeasures.js';
import { type WindowOffset, windowOffset } from './windowOffset.js';

/** The two sides must share this much of their lines. */
const leastAgreement = 0.8;
/** Lines fainter than this on either side (of log luminance) are drowned by pores and fibre. */
const leastContrast = 0.05;
/** Of one line spacing, this much must pass the joint within the stretch. */
const leastCrossed = 0.15;
/** Uncut wood here reads a step below this, mm, in this share of its stretches. */
const ownStepMm = 0.3;
const ownShare = 0.8;

/**
 * How far the lines step in each stretch of a joint, where that can be told, else null.
 *
 * Not told where the grain runs along the joint and no line passes it within the stretch, where the
 * lines are too faint, or where the boards' own lines beside the stretch, whose wood is uncut and
 * whose step is nothing, read as stepped.
 *
 * @param own lines of the same boards with no seam; with none, nothing can be checked or told.
 */
export function toldOffsets(
  seam: LineMeasures,
  own: readonly LineMeasures[],
): (WindowOffset | null)[] {
  const usual = own.flatMap((line) =>
    line.windows.map((window) => ({ atMm: window.atMm, offset: windowOffset(window) })),
  );
  return seam.windows.map((window) => {
    const offset = windowOffset(window);
    if (!offset || offset.agreement < leastAgreement) return null;
    if (contrastOf(window) < leastContrast) return null;
    if (crossedMm(window, seam.windowMm) < leastCrossed * offset.spacingMm) return null;
    const beside = usual
      .filter(({ atMm }) => Math.abs(atMm - window.atMm) < 1.5 * seam.windowMm)
      .flatMap(({ offset: read }) => (read ? [Math.abs(read.offsetMm)] : []))
      .sort((a, b) => a - b);
    const reached = beside[Math.floor(ownShare * beside.length)] ?? Number.POSITIVE_INFINITY;
    return reached < ownStepMm ? offset : null;
  });
}

/** Contrast of the octave that is strongest on both sides. */
const contrastOf = ({ bands }: WindowMeasures) =>
  Math.max(...bands.map((b) => Math.min(b.amplitudeA, b.amplitudeB)));

/** Wood across the grain that passes the joint within a stretch, mm. */
const crossedMm = ({ angleARad, angleBRad }: WindowMeasures, windowMm: number) =>
  windowMm * Math.abs(Math.sin(middleDirectionRad(angleARad, angleBRad)));
