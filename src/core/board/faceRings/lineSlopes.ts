import type { GrainField } from '../../grain/grainField.js';

/**
 * Mean slope of the ring lines against the length in strips across the width (tangent of their
 * angle, +x towards +y), from doubled angles weighted by coherence; within +-1.7 (60 deg).
 *
 * @param yMm middles of the strips.
 */
export function lineSlopes(field: GrainField, yMm: Float64Array, stripMm: number): Float64Array {
  const { width, height, stepMm, angleRad, coherence } = field;
  return yMm.map((middle) => {
    const from = Math.max(0, Math.floor((middle - stripMm / 2) / stepMm));
    const to = Math.min(height - 1, Math.floor((middle + stripMm / 2) / stepMm));
    let [cosine, sine] = [0, 0];
    for (let row = from; row <= to; row++) {
      for (let i = row * width; i < (row + 1) * width; i++) {
        cosine += coherence[i] * Math.cos(2 * angleRad[i]);
        sine += coherence[i] * Math.sin(2 * angleRad[i]);
      }
    }
    return Math.max(-1.7, Math.min(1.7, Math.tan(Math.atan2(sine, cosine) / 2)));
  });
}
