import { coherence } from '../../dist/core/grain/coherence.js';
import { orientationRad } from '../../dist/core/grain/orientationRad.js';
import { structureTensor } from '../../dist/core/grain/structureTensor.js';
import { structureTensorExact } from '../../dist/core/grain/structureTensorExact.js';
import type { Plane } from '../../dist/core/image/plane.js';

/** Milliseconds of every repeat, by method. */
export type Times = Record<string, number[]>;

/** Times our tensor on a plane; the first, uncompiled run of each method is left out. */
export function speedTensor(plane: Plane, repeats: number): Times {
  return {
    ours: timed(repeats, () => structureTensor(plane)),
    oursWithAngles: timed(repeats, () => {
      const { jxx, jxy, jyy } = structureTensor(plane);
      const angle = new Float32Array(jxx.length);
      const clarity = new Float32Array(jxx.length);
      for (let i = 0; i < jxx.length; i++) {
        angle[i] = orientationRad(jxx[i], jxy[i], jyy[i]);
        clarity[i] = coherence(jxx[i], jxy[i], jyy[i]);
      }
      return [angle, clarity];
    }),
  };
}

/** The yardstick, once: it is slow and no aim hangs on it. */
export function speedTensorExact(plane: Plane): Times {
  const start = performance.now();
  structureTensorExact(plane, 1, 6);
  return { oursExact: [performance.now() - start] };
}

function timed(repeats: number, method: () => unknown): number[] {
  method();
  return Array.from({ length: repeats }, () => {
    const start = performance.now();
    method();
    return performance.now() - start;
  });
}
