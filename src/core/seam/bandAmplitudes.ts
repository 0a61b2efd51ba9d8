import { GaborWindow } from './gaborWindow.js';
import { binProfiles, mergedBins, type ProfileBins } from './profileBins.js';

/** Grain frequencies, one an octave, cycles per mm across the grain: lines 16 mm to 0.5 mm apart. */
export const bandFrequenciesPerMm: readonly number[] = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2];

/**
 * Width of a band's window over its period: exp(-u^2 / 2 sigma^2) with sigma = 0.45 periods
 * answers its own frequency with 1, an octave below with 0.37, above with 0.02, so that bands an
 * octave apart, pooled by cubes, answer line patterns of any spacing alike (0.87 to 1.03).
 */
const sigmaOverPeriod = 0.45;
/** Bins a window is summed in: averaging within one takes 0.5 % off both sides' amplitudes. */
const binsPerSigma = 8;
/** The window ends so far from its middle. */
const reachSigmas = 2.5;
/** One window serves every octave: their widths are alike in periods. */
const gabor = new GaborWindow(2 * Math.PI * sigmaOverPeriod, reachSigmas);

/** One octave of the grain pattern at one place of the joint. */
export interface BandPair {
  /** The octave's middle, and the lines' own frequency on each side, cycles per mm. */
  readonly bandPerMm: number;
  readonly frequencyAPerMm: number;
  readonly frequencyBPerMm: number;
  /** Both sides', by energy. */
  readonly frequencyPerMm: number;
  /** Contrast amplitude on each side (of log luminance). */
  readonly amplitudeA: number;
  readonly amplitudeB: number;
  /** |A - B| of the complex amplitudes: 0 where lines run through. */
  readonly difference: number;
  /** A conj(B): its phase is 2 pi nu times the offset of the lines. */
  readonly crossRe: number;
  readonly crossIm: number;
}

/**
 * Complex amplitude of both profiles in each octave about one place, by a Gabor window in the
 * across-grain coordinate u: A = 2 sum P g exp(-2 pi i nu (u - uc)) / sum g, mean removed.
 *
 * @param a, b profiles of the two sides at the line; NaN = unread.
 * @param u across-grain coordinate of each profile sample, mm.
 * @param uc where to look.
 * @returns the octaves whose window the seam covers for more than two thirds.
 */
export function bandAmplitudes(
  a: Float64Array,
  b: Float64Array,
  u: Float64Array,
  uc: number,
): BandPair[] {
  return bandReader(a, b, u)(uc);
}

/** `bandAmplitudes` for many places of one line: what they share is done once. */
export function bandReader(
  a: Float64Array,
  b: Float64Array,
  u: Float64Array,
): (uc: number) => BandPair[] {
  // From the finest octave on: its bins two by two make those of the next.
  let bins: ProfileBins | null = null;
  const bands = [...bandFrequenciesPerMm].reverse().map((nu) => {
    const sigma = sigmaOverPeriod / nu;
    const binMm = sigma / binsPerSigma;
    bins = bins ? mergedBins(bins, binMm) : binProfiles(a, b, u, binMm);
    return { nu, sigma, bins };
  });
  bands.reverse();
  return (uc) =>
    bands
      .map(({ nu, sigma, bins }) => gaborPair(bins, uc, nu, sigma))
      .filter((pair): pair is BandPair => pair !== null);
}

function gaborPair(
  { a, b, u, du }: ProfileBins,
  uc: number,
  nu: number,
  sigma: number,
): BandPair | null {
  const from = lowerBound(u, uc - reachSigmas * sigma);
  const to = lowerBound(u, uc + reachSigmas * sigma);
  const sums = { w: 0, a: 0, b: 0, cos: 0, sin: 0, slopeCos: 0, slopeSin: 0 };
  const sideA = new GaborSum();
  const sideB = new GaborSum();
  for (let n = from; n < to; n++) {
    const t = u[n] - uc;
    gabor.at(t / sigma);
    const g = gabor.gauss * du[n];
    const cos = g * gabor.cos;
    const sin = -g * gabor.sin;
    const slope = t / (sigma * sigma);
    sums.w += g;
    sums.a += g * a[n];
    sums.b += g * b[n];
    sums.cos += cos;
    sums.sin += sin;
    sums.slopeCos += slope * cos;
    sums.slopeSin += slope * sin;
    sideA.add(a[n], cos, sin, slope);
    sideB.add(b[n], cos, sin, slope);
  }
  if (sums.w < (2 / 3) * sigma * Math.sqrt(2 * Math.PI)) return null;
  sideA.finish(sums.a / sums.w, sums);
  sideB.finish(sums.b / sums.w, sums);
  const [pa, pb] = [sideA.power, sideB.power];
  const own = (turning: number, power: number) =>
    Math.max(nu / 2, Math.min(2 * nu, nu + turning / (2 * Math.PI * (power + 1e-18))));
  return {
    bandPerMm: nu,
    frequencyAPerMm: own(sideA.turning, pa),
    frequencyBPerMm: own(sideB.turning, pb),
    frequencyPerMm: own(sideA.turning + sideB.turning, pa + pb),
    amplitudeA: Math.sqrt(pa),
    amplitudeB: Math.sqrt(pb),
    difference: Math.hypot(sideA.re - sideB.re, sideA.im - sideB.im),
    crossRe: sideA.re * sideB.re + sideA.im * sideB.im,
    crossIm: sideA.im * sideB.re - sideA.re * sideB.im,
  };
}

/** Complex amplitude of one side and how fast its phase turns. */
class GaborSum {
  re = 0;
  im = 0;
  private slopeRe = 0;
  private slopeIm = 0;

  add(value: number, cos: number, sin: number, slope: number): void {
    this.re += value * cos;
    this.im += value * sin;
    this.slopeRe += value * slope * cos;
    this.slopeIm += value * slope * sin;
  }

  finish(
    mean: number,
    window: { w: number; cos: number; sin: number; slopeCos: number; slopeSin: number },
  ): void {
    const scale = 2 / window.w;
    this.re = scale * (this.re - mean * window.cos);
    this.im = scale * (this.im - mean * window.sin);
    this.slopeRe = scale * (this.slopeRe - mean * window.slopeCos);
    this.slopeIm = scale * (this.slopeIm - mean * window.slopeSin);
  }

  get power(): number {
    return this.re * this.re + this.im * this.im;
  }

  get turning(): number {
    return this.slopeIm * this.re - this.slopeRe * this.im;
  }
}

/** First index whose value is at least x; u grows. */
function lowerBound(u: Float64Array, x: number): number {
  let low = 0;
  let high = u.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (u[mid] < x) low = mid + 1;
    else high = mid;
  }
  return low;
}
