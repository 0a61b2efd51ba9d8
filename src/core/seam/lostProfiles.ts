import type { LineMeasures } from './lineMeasures.js';

/** What both sides bring to a line, thinned and freed of slow shading, with the weight of each place. */
export interface LostProfiles {
  readonly stepMm: number;
  readonly a: Float64Array;
  readonly b: Float64Array;
  /** Witnesses per sample: wood crossed across the grain over what counts as a new witness. */
  readonly weight: Float64Array;
  readonly witnesses: number;
  /** Of both sides together: what the squared difference of unrelated edges would have. */
  readonly variance: number;
}

/** Two samples become one: 0.5 mm. */
const stride = 2;
/** Shading slower than this many spacings, to either side, is no line. */
const shadingSpacings = 2;
/** Wood this many spacings apart across the grain counts as a new witness. */
const witnessSpacings = 0.4;

/**
 * The two profiles of a line as `lostWidth` compares them.
 *
 * Shading that both boards share (a drift of colour along the board) would make any two edges look
 * as if they met; what is left after taking off the mean over two spacings to either side is lines.
 *
 * @param spacingMm distance between the lines across the grain.
 */
export function lostProfiles(line: LineMeasures, spacingMm: number): LostProfiles {
  const stepMm = line.profileA.stepMm * stride;
  const n = Math.floor(line.profileA.value.length / stride);
  const across = Float64Array.from({ length: n }, (_, i) => line.u[stride * i + 1]);
  const reachMm = shadingSpacings * spacingMm;
  const thin = (v: Float64Array) => {
    const half = Float64Array.from(
      { length: n },
      (_, i) => (v[stride * i] + v[stride * i + 1]) / 2,
    );
    return withoutShading(half, across, reachMm);
  };
  const [a, b] = [thin(line.profileA.value), thin(line.profileB.value)];
  const witnessMm = witnessSpacings * spacingMm;
  const weight = a.map((value, i) => {
    const crossed = across[i] - (i > 0 ? across[i - 1] : 0);
    return Number.isNaN(value + b[i]) ? 0 : Math.min(1, crossed / witnessMm);
  });
  const witnesses = weight.reduce((sum, w) => sum + w, 0);
  let squares = 0;
  weight.forEach((w, i) => {
    if (w > 0) squares += w * (a[i] ** 2 + b[i] ** 2);
  });
  const variance = squares / Math.max(1e-9, witnesses) + 1e-12;
  return { stepMm, a, b, weight, witnesses, variance };
}

/** Values less their mean over reachMm of wood across the grain to either side; NaN stays NaN. */
function withoutShading(value: Float64Array, across: Float64Array, reachMm: number): Float64Array {
  const n = value.length;
  const [sum, wood] = [new Float64Array(n + 1), new Float64Array(n + 1)];
  for (let i = 0; i < n; i++) {
    const crossed = Math.max(1e-4, across[i] - (i > 0 ? across[i - 1] : 0));
    const read = !Number.isNaN(value[i]);
    sum[i + 1] = sum[i] + (read ? value[i] * crossed : 0);
    wood[i + 1] = wood[i] + (read ? crossed : 0);
  }
  let [from, to] = [0, 0];
  return value.map((v, i) => {
    while (across[from] < across[i] - reachMm) from++;
    while (to < n && across[to] <= across[i] + reachMm) to++;
    return v - (sum[to] - sum[from]) / Math.max(1e-9, wood[to] - wood[from]);
  });
}
