import { middleDirectionRad } from '../geometry/middleDirectionRad.js';
import type { Cue } from '../results/visibilityResult.js';
import { amongLinesFactor } from '../visibility/amongLinesFactor.js';
import { type BandBreak, breakCue } from '../visibility/breakCue.js';
import { colourCue } from '../visibility/colourCue.js';
import { contrastSensitivity } from '../visibility/contrastSensitivity.js';
import { cyclesPerDeg } from '../visibility/cyclesPerDeg.js';
import { directionCue } from '../visibility/directionCue.js';
import { glueLineCue } from '../visibility/glueLineCue.js';
import { grazingFactor } from '../visibility/grazingFactor.js';
import { spacingCue } from '../visibility/spacingCue.js';
import { type BandPair, bandFrequenciesPerMm } from './bandAmplitudes.js';
import { carryErrors } from './carryErrors.js';
import { colourBandsMm } from './colourSteps.js';
import type { WindowMeasures } from './lineMeasures.js';

/** Each cue over its own threshold, unmasked; null where this stretch cannot tell. */
export interface CueStrengths extends Record<Exclude<Cue, 'break' | 'colour'>, number | null> {
  /** The break of the lines, octave by octave (`bandFrequenciesPerMm`). */
  readonly breaks: readonly (number | null)[];
  /** How far the lines' break, turn and spacing count by their angle (`amongLinesFactor`). */
  readonly among: number;
  /** What breaks would read, octave by octave, if only the directions erred (`carryErrors`). */
  readonly breakErrors: readonly number[];
  /** The step of colour along and beside the boards' own figure (`figureColour`). */
  readonly colours: readonly [along: number, beside: number];
}

/** Contrast at which a direction or spacing is judged as well as it ever is: 1 / 157 at best. */
const peakSensitivity = 157;
/** Finest glue line that a working scale resolves, mm. */
const leastGlueWidthMm = 0.1;

/**
 * The five cues of one stretch of a line for an eye at distanceMm, each in times over just
 * visible.
 */
export function windowCues(window: WindowMeasures, distanceMm: number): CueStrengths {
  const angle = middleDirectionRad(window.angleARad, window.angleBRad);
  const bands = bandFrequenciesPerMm.map((nu) => window.bands.find((b) => b.bandPerMm === nu));
  const whole = bands.map((band) =>
    band ? breakCue([allParted(band, angle, distanceMm)], distanceMm) : null,
  );
  const errorOf = carryErrors(angle, window.angleSeRad);
  const lines = strongest(window.bands, distanceMm);
  const { areaMm, peak } = window.ridge;
  const colour = window.colourStep(bandIndex(distanceMm));
  const field = smallField(distanceMm);
  const widthMm = Math.max(leastGlueWidthMm, Math.abs(areaMm / (peak || 1)));
  return {
    breaks: whole.map((most, k) => most && most * partedShare(bands[k])),
    breakErrors: whole.map((most, k) => (most ?? 0) * errorOf(bands[k]?.frequencyPerMm ?? 0)),
    among: amongLinesFactor(angle),
    direction: lines && directionOf(window, lines, distanceMm) * grazing(lines, angle, distanceMm),
    spacing:
      lines &&
      window.spacingRatio &&
      spacingCue(1, window.spacingRatio) *
        Math.sqrt(clarity(lines, distanceMm)) *
        grazing(lines, angle, distanceMm),
    colours: [colourCue(colour.alongDeltaE) * field, colourCue(colour.besideDeltaE) * field],
    glueLine: glueLineCue({ contrast: areaMm / widthMm, widthMm, distanceMm }),
  };
}

/** The band as if none of its lines ran on: |A - B| = |A| + |B|, as far as it grazes. */
function allParted(band: BandPair, angleRad: number, distanceMm: number): BandBreak {
  const { frequencyPerMm, amplitudeA, amplitudeB } = band;
  const difference = (amplitudeA + amplitudeB) * grazing(band, angleRad, distanceMm);
  return { frequencyPerMm, amplitudeA, amplitudeB, difference };
}

function partedShare(band: BandPair | undefined): number {
  const total = band ? band.amplitudeA + band.amplitudeB : 0;
  return band && total > 0 ? band.difference / total : 0;
}

const grazing = (band: BandPair, angleRad: number, distanceMm: number) =>
  grazingFactor(cyclesPerDeg(1 / band.frequencyPerMm, distanceMm), angleRad);

function strongest(bands: readonly BandPair[], distanceMm: number): BandPair | null {
  let best: BandPair | null = null;
  let most = 0;
  for (const band of bands) {
    const s = contrastSensitivity(cyclesPerDeg(1 / band.frequencyPerMm, distanceMm));
    const seen = s * (band.amplitudeA + band.amplitudeB);
    if (seen > most) [best, most] = [band, seen];
  }
  return best;
}

function directionOf(window: WindowMeasures, lines: BandPair, distanceMm: number): number {
  return directionCue({
    changeRad: Math.sqrt(Math.max(0, window.turnRad ** 2 - window.doubtRad ** 2)),
    contrast: (lines.amplitudeA + lines.amplitudeB) / 2,
    spacingMm: 1 / lines.frequencyPerMm,
    distanceMm,
  });
}

/** How clearly the lines are seen, 0..1: a change of spacing is seen no better than they are. */
function clarity(lines: BandPair, distanceMm: number): number {
  const sensitivity = contrastSensitivity(cyclesPerDeg(1 / lines.frequencyPerMm, distanceMm));
  const seen = (sensitivity * (lines.amplitudeA + lines.amplitudeB)) / 2 / peakSensitivity;
  return Math.min(1, Math.max(0, seen));
}

/**
 * Beyond the distance at which the widest band read fills half a degree, the colours fill less of
 * the eye and the step counts in proportion (assumption: threshold times visual angle constant).
 */
const smallField = (distanceMm: number) =>
  Math.min(1, colourBandsMm[colourBandsMm.length - 1] / ((distanceMm * Math.PI) / 360));

/** The colour band nearest to half a degree at this distance. */
function bandIndex(distanceMm: number): number {
  const wanted = Math.log((distanceMm * Math.PI) / 360);
  let best = 0;
  colourBandsMm.forEach((mm, k) => {
    const off = Math.abs(Math.log(mm) - wanted);
    if (off < Math.abs(Math.log(colourBandsMm[best]) - wanted)) best = k;
  });
  return best;
}
