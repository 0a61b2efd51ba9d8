import { glueLineThresholdArcsec } from './glueLineThresholdArcsec.js';

const arcsecPerRad = (3600 * 180) / Math.PI;

/**
 * How visible the glue line itself is, in times over just visible.
 *
 * x = contrast * width(arcsec) / T(width).
 *
 * @param line contrast: darkening or brightening over the wood beside it, either sign; widthMm:
 *   width of the line, mm; distanceMm: viewing distance, mm.
 * @returns 0 or more, before masking.
 */
export function glueLineCue({
  contrast,
  widthMm,
  distanceMm,
}: {
  readonly contrast: number;
  readonly widthMm: number;
  readonly distanceMm: number;
}): number {
  const arcsec = (widthMm / distanceMm) * arcsecPerRad;
  return (Math.abs(contrast) * arcsec) / glueLineThresholdArcsec(arcsec / 60);
}
