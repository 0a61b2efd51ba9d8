import type { Plane } from '../../../src/core/image/plane.js';

/**
 * Sinusoidal lines whose direction (along the line) is angleRad from +x towards +y:
 * 0.5 + 0.3 cos(2 pi (y cos - x sin) / spacing + phase).
 */
export function drawGrating(
  width: number,
  height: number,
  angleRad: number,
  spacingPx: number,
  phase = 0,
): Plane {
  const data = new Float32Array(width * height);
  const k = (2 * Math.PI) / spacingPx;
  for (let i = 0; i < data.length; i++) {
    const x = i % width;
    const y = (i - x) / width;
    data[i] = 0.5 + 0.3 * Math.cos(k * (y * Math.cos(angleRad) - x * Math.sin(angleRad)) + phase);
  }
  return { width, height, data };
}
