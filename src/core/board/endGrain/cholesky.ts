/** A symmetric positive matrix split as L L^T, to solve with it many times. */
export interface Cholesky {
  /** x with M x = b. */
  solve(b: ArrayLike<number>): Float64Array;
  /** ln det M. */
  readonly logDet: number;
}

/**
 * Splits a symmetric positive definite matrix (row major, n x n; only its lower half is read).
 * @returns null when it is not positive.
 */
export function cholesky(matrix: Float64Array, n: number): Cholesky | null {
  const lower = matrix.slice();
  let logDet = 0;
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let sum = lower[i * n + j];
      for (let k = 0; k < j; k++) sum -= lower[i * n + k] * lower[j * n + k];
      if (i > j) lower[i * n + j] = sum / lower[j * n + j];
      else if (sum > 0) lower[j * n + j] = Math.sqrt(sum);
      else return null;
    }
    logDet += 2 * Math.log(lower[j * n + j]);
  }
  return {
    logDet,
    solve(b) {
      const x = Float64Array.from(b);
      for (let i = 0; i < n; i++) {
        for (let k = 0; k < i; k++) x[i] -= lower[i * n + k] * x[k];
        x[i] /= lower[i * n + i];
      }
      for (let i = n - 1; i >= 0; i--) {
        for (let k = i + 1; k < n; k++) x[i] -= lower[k * n + i] * x[k];
        x[i] /= lower[i * n + i];
      }
      return x;
    },
  };
}
