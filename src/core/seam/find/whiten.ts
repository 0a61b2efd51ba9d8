/** A little of the identity is mixed in, so that two cues that say the same are not split hairs over. */
const ridge = 0.1;

/**
 * Inverse of the correlation of several signed cues over a board's own lines (3 x 3 at most),
 * row by row: z' C^-1 z is then how unusual a combination of cues is, not how large each is. Dark
 * late wood is also redder; a step that is darker but less red is no late wood.
 */
export function whiten(cues: readonly Float32Array[]): number[][] {
  const n = cues.length;
  const c = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => (i === j ? 1 + ridge : correlation(cues[i], cues[j]))),
  );
  return inverse(c);
}

function correlation(a: Float32Array, b: Float32Array): number {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let i = 0; i < a.length; i++) {
    // Far lines, perhaps seams, do not shape what is usual.
    if (!(Math.abs(a[i]) < 2.5 && Math.abs(b[i]) < 2.5)) continue;
    ab += a[i] * b[i];
    aa += a[i] * a[i];
    bb += b[i] * b[i];
  }
  return aa * bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/** Gauss-Jordan; the ridge keeps the pivots away from 0. */
function inverse(matrix: number[][]): number[][] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i++) {
    const pivot = rows[i][i];
    rows[i] = rows[i].map((v) => v / pivot);
    for (let k = 0; k < n; k++) {
      if (k === i) continue;
      const f = rows[k][i];
      rows[k] = rows[k].map((v, j) => v - f * rows[i][j]);
    }
  }
  return rows.map((row) => row.slice(n));
}
