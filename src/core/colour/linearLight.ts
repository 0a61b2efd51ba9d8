/**
 * Linear light of one 8-bit sRGB level, 0 to 1.
 *
 * A photo stores levels close to what the eye sees; averages, grain contrast and colour steps
 * are only right in proportion to light itself. c = level / 255;
 * light = c / 12.92 up to c = 0.04045, else ((c + 0.055) / 1.055)^2.4.
 *
 * @param level sRGB level, 0 to 255 (fractions are allowed).
 * @returns light relative to white, 0 to 1.
 * Source: IEC 61966-2-1:1999, 5.2.
 */
export function linearLight(level: number): number {
  const c = level / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
}
