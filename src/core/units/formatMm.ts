/**
 * Writes a length in millimetres without idle zeros: `363.5 mm`, `190 mm`.
 * @param mm length, mm
 * @param places most decimals, default 1
 */
export function formatMm(mm: number, places = 1): string {
  const fixed = mm.toFixed(places);
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return `${short === '-0' ? '0' : short} mm`;
}
