/**
 * Adds a thin spindle-shaped dash to a plane with exact area coverage across, so that dashes
 * much thinner than a pixel stay as faint as they should.
 *
 * @param plane row-major plane of `width` x `height` pixels, changed in place.
 * @param x0 @param y0 @param x1 @param y1 ends, px (pixel k covers k .. k + 1).
 * @param thicknessPx width at the middle, px.
 * @param amount value added where the dash covers a whole pixel.
 */
export function splatDash(
  plane: Float32Array,
  width: number,
  height: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  thicknessPx: number,
  amount: number,
): void {
  const steep = Math.abs(y1 - y0) > Math.abs(x1 - x0);
  let a0 = steep ? y0 : x0;
  let a1 = steep ? y1 : x1;
  let b0 = steep ? x0 : y0;
  let b1 = steep ? x1 : y1;
  if (a0 > a1) {
    [a0, a1] = [a1, a0];
    [b0, b1] = [b1, b0];
  }
  const length = a1 - a0;
  if (!(length > 0)) return;
  const slope = (b1 - b0) / length;
  const alongLimit = steep ? height : width;
  const acrossLimit = steep ? width : height;
  const alongStep = steep ? width : 1;
  const acrossStep = steep ? 1 : width;
  const half = 0.5 * thicknessPx * Math.sqrt(1 + slope * slope);
  const first = Math.max(0, Math.floor(a0));
  const last = Math.min(alongLimit - 1, Math.floor(a1));
  for (let i = first; i <= last; i++) {
    const covered = Math.min(a1, i + 1) - Math.max(a0, i);
    if (covered <= 0) continue;
    const t = (2 * (i + 0.5 - a0)) / length - 1;
    const taper = 1 - Math.min(1, t * t * t * t);
    const reach = half * (0.35 + 0.65 * taper);
    const centre = b0 + slope * (i + 0.5 - a0);
    const low = Math.max(0, Math.floor(centre - reach));
    const high = Math.min(acrossLimit - 1, Math.floor(centre + reach));
    for (let j = low; j <= high; j++) {
      const across = Math.min(centre + reach, j + 1) - Math.max(centre - reach, j);
      if (across > 0) plane[i * alongStep + j * acrossStep]! += amount * covered * across;
    }
  }
}
