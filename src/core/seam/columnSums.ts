import { smoothedRow } from '../filter/smoothedRow.js';
import type { BlockTensor } from '../grain/blockTensor.js';
import type { CarriedBlocks } from './carriedBlocks.js';

/** Sums down the columns of blocks, by weight, of the double-angle vector (Jxx - Jyy, 2 Jxy). */
export class SlopeSums {
  constructor(
    columns: number,
    readonly q1: Float64Array = new Float64Array(columns),
    readonly q2: Float64Array = new Float64Array(columns),
  ) {}

  addRow({ width, jxx, jxy, jyy }: BlockTensor, row: number, weight: number): void {
    const { q1, q2 } = this;
    const double = 2 * weight;
    for (let i = 0, k = row * width; i < width; i++, k++) {
      q1[i] += weight * (jxx[k] - jyy[k]);
      q2[i] += double * jxy[k];
    }
  }

  /** The same averaged along the rows. */
  along(kernel: Float64Array): SlopeSums {
    return new SlopeSums(0, smoothedRow(this.q1, kernel), smoothedRow(this.q2, kernel));
  }
}

/**
 * Sums down the columns of Jxx + Jyy after and before the carry along the grain, by weight, and of the
 * vector's products, by weight squared.
 */
export class ScatterSums {
  constructor(
    columns: number,
    readonly total: Float64Array = new Float64Array(columns),
    readonly q1q1: Float64Array = new Float64Array(columns),
    readonly q2q2: Float64Array = new Float64Array(columns),
    readonly q1q2: Float64Array = new Float64Array(columns),
    readonly before: Float64Array = new Float64Array(columns),
  ) {}

  addRow({ width, jxx, jxy, jyy, uncarried }: CarriedBlocks, row: number, weight: number): void {
    const { total, q1q1, q2q2, q1q2, before } = this;
    for (let i = 0, k = row * width; i < width; i++, k++) {
      const xx = weight * jxx[k];
      const yy = weight * jyy[k];
      const q2 = 2 * weight * jxy[k];
      total[i] += xx + yy;
      before[i] += weight * uncarried[k];
      q1q1[i] += (xx - yy) * (xx - yy);
      q2q2[i] += q2 * q2;
      q1q2[i] += (xx - yy) * q2;
    }
  }

  along(kernel: Float64Array): ScatterSums {
    const squared = kernel.map((weight) => weight * weight);
    return new ScatterSums(
      0,
      smoothedRow(this.total, kernel),
      smoothedRow(this.q1q1, squared),
      smoothedRow(this.q2q2, squared),
      smoothedRow(this.q1q2, squared),
      smoothedRow(this.before, kernel),
    );
  }
}
