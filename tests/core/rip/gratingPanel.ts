import type { PanelPhoto } from '../../../src/core/image/panelPhoto.js';

/** Even, straight grain: sinusoidal lines of log luminance, drawn as a photo. */
export interface Grating {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly spacingMm: number;
  readonly angleDeg: number;
  readonly contrast: number;
  readonly pxPerMm?: number;
  /** Noise, standard deviation of the contrast. */
  readonly noise?: number;
}

/** sRGB of a linear light (IEC 61966-2-1). */
function encode(linear: number): number {
  const v = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * Math.min(1, Math.max(0, v)));
}

/** An uncut panel of such grain. */
export function gratingPanel(grating: Grating): PanelPhoto {
  const { widthMm, heightMm, spacingMm, angleDeg, contrast, pxPerMm = 6, noise = 0.004 } = grating;
  const [width, height] = [Math.round(widthMm * pxPerMm), Math.round(heightMm * pxPerMm)];
  const data = new Uint8Array(3 * width * height);
  const angle = (angleDeg * Math.PI) / 180;
  let state = 7;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const across = (-(x + 0.5) * Math.sin(angle) + (y + 0.5) * Math.cos(angle)) / pxPerMm;
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const grain = contrast * Math.cos((2 * Math.PI * across) / spacingMm);
      const light = 0.4 * Math.exp(grain + noise * 3.46 * (state / 2 ** 32 - 0.5));
      const i = 3 * (y * width + x);
      data[i] = encode(light);
      data[i + 1] = encode(0.8 * light);
      data[i + 2] = encode(0.6 * light);
    }
  }
  return { image: { width, height, data }, pxPerMm, widthMm, heightMm, notes: [] };
}
