import { describe, expect, it } from 'vitest';
import { gaussianDerivativeKernel } from '../../../src/core/filter/gaussianDerivativeKernel.js';
import { gaussianGradient } from '../../../src/core/filter/gaussianGradient.js';
import { gaussianKernel } from '../../../src/core/filter/gaussianKernel.js';
import { drawGrating } from './drawGrating.js';

const degree = Math.PI / 180;

/** Kernel's answer to a wave of w radians a pixel, evaluated exactly. */
const respond = (kernel: Float64Array, w: number, wave: (angle: number) => number) =>
  kernel.reduce((sum, weight, i) => sum + weight * wave(w * (i - (kernel.length - 1) / 2)), 0);

describe('gaussianGradient', () => {
  it('tells the direction of lines 4 px apart within 0.01 deg', () => {
    // Analytic: a grating's gradient is the kernels' frequency response times the wave.
    const smooth = gaussianKernel(1);
    const slope = gaussianDerivativeKernel(1);
    for (let angle = 0; angle <= 90; angle++) {
      const u = (Math.PI / 2) * Math.cos(angle * degree);
      const v = (Math.PI / 2) * Math.sin(angle * degree);
      const gx = respond(slope, u, Math.sin) * respond(smooth, v, Math.cos);
      const gy = respond(smooth, u, Math.cos) * respond(slope, v, Math.sin);
      expect(Math.abs(Math.atan2(gy, gx) / degree - angle), `${angle} deg`).toBeLessThan(0.01);
    }
  });

  it('gives that response on a drawn grating, pixel by pixel', () => {
    const size = 40;
    const angleRad = 0.3;
    const k = (2 * Math.PI) / 4;
    const { gx, gy } = gaussianGradient(drawGrating(size, size, angleRad, 4));
    const waveX = -k * Math.sin(angleRad);
    const waveY = k * Math.cos(angleRad);
    const smooth = gaussianKernel(1);
    const slope = gaussianDerivativeKernel(1);
    const gainX = respond(slope, waveX, Math.sin) * respond(smooth, waveY, Math.cos);
    const gainY = respond(smooth, waveX, Math.cos) * respond(slope, waveY, Math.sin);
    for (let py = 4; py < size - 4; py++) {
      for (let px = 4; px < size - 4; px++) {
        const wave = -0.3 * Math.sin(waveX * px + waveY * py);
        expect(Math.abs(gx[py * size + px]! - gainX * wave)).toBeLessThan(1e-6);
        expect(Math.abs(gy[py * size + px]! - gainY * wave)).toBeLessThan(1e-6);
      }
    }
  });

  it('is exactly (a, b) on the ramp a x + b y', () => {
    const size = 24;
    const data = Float32Array.from({ length: size * size }, (_, i) => {
      return 0.02 * (i % size) - 0.03 * Math.floor(i / size);
    });
    const { gx, gy } = gaussianGradient({ width: size, height: size, data }, 1.5);
    for (let i = 7; i < size - 7; i++) {
      expect(gx[i * size + i]).toBeCloseTo(0.02, 6);
      expect(gy[i * size + i]).toBeCloseTo(-0.03, 6);
    }
  });
});
