import type { BandPair } from './bandAmplitudes.js';

/** Bands that share the lines' energy within this factor of the strongest are "the lines". */
const sharingBands = 0.5;

/** Distance between grain lines on one side: the centre of the bands' energy, ln scale, mm. */
export function spacingMm(bands: readonly BandPair[], side: 'A' | 'B'): number {
  const amplitude = (b: BandPair) => (side === 'A' ? b.amplitudeA : b.amplitudeB);
  const most = Math.max(...bands.map(amplitude));
  let sum = 0;
  let weight = 0;
  for (const band of bands) {
    if (amplitude(band) < sharingBands * most) continue;
    const w = amplitude(band) ** 2;
    sum -= w * Math.log(side === 'A' ? band.frequencyAPerMm : band.frequencyBPerMm);
    weight += w;
  }
  return Math.exp(sum / Math.max(weight, 1e-12));
}
