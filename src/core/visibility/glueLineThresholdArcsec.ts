/** Width in minutes of arc and the contrast times width, in seconds of arc, just seen there. */
const widthArcmin = [1, 2, 4, 10] as const;
const thresholdArcsec = [3.4, 3.7, 4.5, 8.6] as const;

/**
 * Contrast times width at which a thin line is just seen.
 *
 * 3.4" up to 1' wide, 3.7" at 2', 4.5" at 4', 8.6" at 10' (method.md, section 5), straight lines
 * between; wider than 10' the contrast needed stays that of 10'.
 *
 * @param arcmin width of the line in the eye's view, minutes of arc, 0 or more.
 * @returns contrast times width, seconds of arc.
 */
export function glueLineThresholdArcsec(arcmin: number): number {
  const last = widthArcmin.length - 1;
  if (arcmin >= widthArcmin[last]) return (thresholdArcsec[last] * arcmin) / widthArcmin[last];
  const next = widthArcmin.findIndex((width) => width > arcmin);
  if (next === 0) return thresholdArcsec[0];
  const share = (arcmin - widthArcmin[next - 1]) / (widthArcmin[next] - widthArcmin[next - 1]);
  return thresholdArcsec[next - 1] + share * (thresholdArcsec[next] - thresholdArcsec[next - 1]);
}
