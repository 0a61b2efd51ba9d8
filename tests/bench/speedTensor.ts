import { coherence } from '../../dist/core/grain/coherence.js';
import { orientationRad } from '../../dist/core/grain/orientationRad.js';
import { structureTensor } from '../../dist/core/grain/structureTensor.js';
import { structureTensorExact } from '../../dist/core/grain/structureTensorExact.js';
import type { Plane } from '../../dist/core/image/plane.js';

/** One repeat: time on the clock and time that the processor worked on it. */
export interface Lap {
  readonly wallMs: number;
  readonly processorMs: number;
}

/** Every repeat, by method. */
export type Times = Record<string, Lap[]>;

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
  return { oursExact: [lap(() => structureTensorExact(plane, 1, 6))] };
}

function timed(repeats: number, method: () => unknown): Lap[] {
  method();
  return Array.from({ length: repeats }, () => lap(method));
}

function lap(method: () => unknown): Lap {
  const wall = performance.now();
  const processor = process.cpuUsage();
  method();
  const { user, system } = process.cpuUsage(processor);
  return { wallMs: performance.now() - wall, processorMs: (user + system) / 1000 };
}
