/** Surroundings that a row is measured against, mm to either side. */
const outerMm = 10;
const mostValue = 3;

/**
 * How much livelier every cell is than its surroundings in the same column: ln(1 + energy / usual),
 * at most 3 (so that one knot is no seam), less its own mean; usual the mean energy 10 mm up and down less the rows within innerMm.
 *
 * Weight q / (1 + q), q = could / usual: what a seam could add here over what is there anyway.
 *
 * @param energy, could per cell, index row * columns + column.
 */
export function logRatioMap(
  energy: Float32Array,
  could: Float32Array,
  columns: number,
  rows: number,
  rowsPerMm: number,
  innerMm: number,
): { value: Float32Array; weight: Float32Array } {
  const value = new Float32Array(columns * rows);
  const weight = new Float32Array(columns * rows);
  const outer = Math.round(outerMm * rowsPerMm);
  const inner = Math.round(innerMm * rowsPerMm);
  const sumEnergy = new Float64Array(rows + 1);
  const sumCould = new Float64Array(rows + 1);
  for (let c = 0; c < columns; c++) {
    for (let y = 0; y < rows; y++) {
      sumEnergy[y + 1] = sumEnergy[y] + energy[y * columns + c];
      sumCould[y + 1] = sumCould[y] + could[y * columns + c];
    }
    for (let y = 0; y < rows; y++) {
      const [a, b] = [Math.max(0, y - outer), Math.min(rows, y + outer + 1)];
      const [p, q] = [Math.max(0, y - inner), Math.min(rows, y + inner + 1)];
      const n = b - a - (q - p);
      const around = (sums: Float64Array) => (sums[b] - sums[a] - sums[q] + sums[p]) / n;
      const usual = around(sumEnergy) + 1e-12;
      const i = y * columns + c;
      const lively = around(sumCould);
      value[i] = Math.min(mostValue, Math.log1p(energy[i] / usual));
      weight[i] = lively / (lively + usual);
    }
  }
  centre(value, weight);
  return { value, weight };
}

/** Takes the weighted mean off, so that a line is not judged by how many cells it has. */
function centre(value: Float32Array, weight: Float32Array): void {
  let sum = 0;
  let total = 0;
  for (let i = 0; i < value.length; i++) {
    sum += weight[i] * value[i];
    total += weight[i];
  }
  const mean = total > 0 ? sum / total : 0;
  for (let i = 0; i < value.length; i++) value[i] -= mean;
}
