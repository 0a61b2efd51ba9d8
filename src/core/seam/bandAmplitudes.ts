/** Grain frequencies, one an octave, cycles per mm across the grain: lines 16 mm to 0.5 mm apart. */
export const bandFrequenciesPerMm: readonly number[] = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2];

/**
 * Width of a band's window over its period: exp(-u^2 / 2 sigma^2) with sigma = 0.45 periods
 * answers its own frequency with 1, an octave below with 0.37, above with 0.02, so that bands an
 * octave apart, pooled by cubes, answer line patterns of any spacing alike (0.87 to 1.03).
 */
const sigmaOverPeriod = 0.45;

/** One octave of the grain pattern at one place of the joint. */
export interface BandPair {
  readonly frequencyPerMm: number;
  /** Contrast amplitude on each side (of log luminance). */
  readonly amplitudeA: number;
  readonly amplitudeB: number;
  /** |A - B| of the complex amplitudes: 0 where lines run through. */
  readonly difference: number;
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
  const pairs: BandPair[] = [];
  for (const nu of bandFrequenciesPerMm) {
    const sigma = sigmaOverPeriod / nu;
    const from = lowerBound(u, uc - 2.5 * sigma);
    const to = lowerBound(u, uc + 2.5 * sigma);
    const pair = gaborPair(a, b, u, uc, nu, sigma, from, to);
    if (pair) pairs.push(pair);
  }
  return pairs;
}

function gaborPair(
  a: Float64Array,
  b: Float64Array,
  u: Float64Array,
  uc: number,
  nu: number,
  sigma: number,
  from: number,
  to: number,
): BandPair | null {
  let [w, wa, wb, wc, ws] = [0, 0, 0, 0, 0];
  let [ac, as, bc, bs] = [0, 0, 0, 0];
  for (let n = from; n < to; n++) {
    const du = n > 0 ? u[n] - u[n - 1] : u[0];
    if (Number.isNaN(a[n]) || Number.isNaN(b[n]) || du <= 0) continue;
    const t = u[n] - uc;
    const g = Math.exp(-0.5 * (t / sigma) ** 2) * du;
    const cos = g * Math.cos(2 * Math.PI * nu * t);
    const sin = g * Math.sin(2 * Math.PI * nu * t);
    w += g;
    wa += g * a[n];
    wb += g * b[n];
    wc += cos;
    ws += sin;
    ac += cos * a[n];
    as += sin * a[n];
    bc += cos * b[n];
    bs += sin * b[n];
  }
  if (w < (2 / 3) * sigma * Math.sqrt(2 * Math.PI)) return null;
  const [ma, mb] = [wa / w, wb / w];
  const [rac, ras] = [(2 * (ac - ma * wc)) / w, (2 * (as - ma * ws)) / w];
  const [rbc, rbs] = [(2 * (bc - mb * wc)) / w, (2 * (bs - mb * ws)) / w];
  return {
    frequencyPerMm: nu,
    amplitudeA: Math.hypot(rac, ras),
    amplitudeB: Math.hypot(rbc, rbs),
    difference: Math.hypot(rac - rbc, ras - rbs),
  };
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
