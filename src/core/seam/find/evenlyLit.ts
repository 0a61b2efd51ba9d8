import { createPlane, type Plane } from '../../image/plane.js';

/**
 * Takes the fall of the light off a panel: what a lamp to one side or a lens adds smoothly.
 *
 * Grain read at 3 degrees is carried over centimetres, and across them a lamp's slope would pass for
 * lines that do not meet. What comes off is the least squares fit by 1, x, y, xy and the second Legendre
 * polynomials of x and y (x, y from -1 to 1 over the panel). They are orthogonal over a rectangle, so
 * each coefficient is a mean of its own.
 *
 * @param plane log luminance. @returns the same about 0.
 */
export function evenlyLit(plane: Plane): Plane {
  const { width, height, data } = plane;
  const [xs, ys] = [legendre(width), legendre(height)];
  const light = fittedLight(plane, xs, ys);
  const out = createPlane(width, height);
  for (let y = 0; y < height; y++) {
    const [p0, p1, p2] = light.map((ofY) => ofY.reduce((sum, k, n) => sum + k * ys[n][y], 0));
    for (let x = 0, i = y * width; x < width; x++, i++) {
      out.data[i] = data[i] - p0 - p1 * xs[1][x] - p2 * xs[2][x];
    }
  }
  return out;
}

/** Coefficients by order of x, then of y, up to the second order in all. */
function fittedLight({ width, height, data }: Plane, xs: Shapes, ys: Shapes): number[][] {
  const sums = [[0, 0, 0], [0, 0], [0]];
  for (let y = 0; y < height; y++) {
    const ofRow = [0, 0, 0];
    for (let x = 0, i = y * width; x < width; x++, i++) {
      ofRow[0] += data[i];
      ofRow[1] += xs[1][x] * data[i];
      ofRow[2] += xs[2][x] * data[i];
    }
    sums.forEach((ofY, m) => {
      for (let n = 0; n < ofY.length; n++) ofY[n] += ofRow[m] * ys[n][y];
    });
  }
  // The mean square of a Legendre polynomial of order n is 1 / (2 n + 1).
  const perPixel = (m: number, n: number) => ((2 * m + 1) * (2 * n + 1)) / (width * height);
  return sums.map((ofY, m) => ofY.map((sum, n) => sum * perPixel(m, n)));
}

type Shapes = readonly Float64Array[];

/** Legendre polynomials of order 0 to 2 at the middle of every pixel. */
function legendre(length: number): Shapes {
  const at = Float64Array.from({ length }, (_, i) => (2 * i + 1) / length - 1);
  return [at.map(() => 1), at, at.map((t) => 1.5 * t * t - 0.5)];
}
