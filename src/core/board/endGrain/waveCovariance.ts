/** A point of the end and the unit direction along the ring there. */
export interface RingPoint {
  readonly xMm: number;
  readonly yMm: number;
  readonly tx: number;
  readonly ty: number;
}

/** Lengths of ring waviness, mm: from a few rings to the width of a board. */
const lengthsMm = [30, 15, 7.5] as const;

/**
 * Covariance of how far two rings' directions stray from the circle, for unit strength, rad^2.
 *
 * A ring's border wavers by h(x, y), a random field whose slope is as large at every scale from
 * 7.5 to 30 mm (assumption: rings are no smoother at one scale than at another; the strength is
 * measured on the board itself). With h of covariance a^2 exp(-d^2 / 2 L^2), a = L, the slopes
 * along the rings at two places d apart have
 *
 *     cov = sum over L of ((t . t') - (t . d)(t' . d) / L^2) exp(-d^2 / 2 L^2) / 3
 */
export function waveCovariance(a: RingPoint, b: RingPoint): number {
  const dx = a.xMm - b.xMm;
  const dy = a.yMm - b.yMm;
  const square = dx * dx + dy * dy;
  const turn = a.tx * b.tx + a.ty * b.ty;
  const both = (a.tx * dx + a.ty * dy) * (b.tx * dx + b.ty * dy);
  let sum = 0;
  for (const length of lengthsMm) {
    const over = 1 / (length * length);
    sum += (turn - both * over) * Math.exp(-0.5 * square * over);
  }
  return sum / lengthsMm.length;
}
