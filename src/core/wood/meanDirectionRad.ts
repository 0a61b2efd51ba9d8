/**
 * Mean of a direction field over a disc, by doubled angles (a grain line has no sense).
 *
 * @param directionRad the field, rad; NaN where there is none.
 * @param xMm middle of the disc.
 * @param yMm middle of the disc.
 * @param overMm radius of the disc; 0 gives the field at the point.
 * @returns rad in (-pi/2, pi/2], NaN where the disc holds nothing.
 */
export function meanDirectionRad(
  directionRad: (xMm: number, yMm: number) => number,
  xMm: number,
  yMm: number,
  overMm: number,
): number {
  if (!(overMm > 0)) return directionRad(xMm, yMm);
  const steps = 5;
  let cos = 0;
  let sin = 0;
  for (let j = -steps; j <= steps; j++) {
    for (let i = -steps; i <= steps; i++) {
      if (i * i + j * j > steps * steps) continue;
      const angle = directionRad(xMm + (overMm * i) / steps, yMm + (overMm * j) / steps);
      if (Number.isNaN(angle)) continue;
      cos += Math.cos(2 * angle);
      sin += Math.sin(2 * angle);
    }
  }
  return cos === 0 && sin === 0 ? Number.NaN : Math.atan2(sin, cos) / 2;
}
