/**
 * Location and scale of the Gumbel law that the strongest lines of many stretches of one board
 * follow: F(x) = exp(-exp(-(x - location) / scale)), from the 20 and 50 % points only, so that
 * real seams among the lines (up to two fifths of them) do not hide each other.
 *
 * -ln(-ln 0.5) = 0.3665, -ln(-ln 0.2) = -0.4759. The scale is widened by 1.6: real boards' upper
 * tails are longer than their lower half tells (54 drawn faces with no seam, tuning seeds).
 */
export function tailScale(values: readonly number[]): { location: number; scale: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (q: number) => {
    const x = q * (sorted.length - 1);
    const i = Math.floor(x);
    const low = sorted[i] ?? 0;
    return low + (x - i) * ((sorted[i + 1] ?? low) - low);
  };
  const scale = (1.6 * (at(0.5) - at(0.2))) / 0.8424 + 1e-6;
  return { location: at(0.5) - 0.3665 * scale, scale };
}
