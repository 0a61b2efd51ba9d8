import type { MatrixProfile } from './matrixProfile.js';

/** XYZ (D50) to linear sRGB: inverse of IEC 61966-2-1's matrix carried to D50 (Bradford). */
const fromXyz = [
  [3.1341359, -1.6173864, -0.4906619],
  [-0.9787955, 1.9162544, 0.0334427],
  [0.0719553, -0.2289769, 1.4053861],
] as const;

const steps = 4095;
const encoded = Uint8ClampedArray.from({ length: steps + 1 }, (_, n) => {
  const x = n / steps;
  return 255 * (x <= 0.0031308 ? 12.92 * x : 1.055 * x ** (1 / 2.4) - 0.055);
});
// Below this the curve is too steep for the table.
const darkest = 0.02;

function encode(linear: number): number {
  if (linear >= 1) return 255;
  if (linear <= 0) return 0;
  if (linear > darkest) return encoded[Math.round(linear * steps)]!;
  const v = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * v);
}

/** Converts RGBA pixels from a matrix profile to sRGB, in place; colours outside sRGB are clipped. */
export function convertToSrgb(rgba: Uint8ClampedArray, profile: MatrixProfile): void {
  const [r, g, b] = profile.curves;
  const m = fromXyz.map((row) =>
    [0, 1, 2].map(
      (column) =>
        row[0] * profile.toXyz[0]![column]! +
        row[1] * profile.toXyz[1]![column]! +
        row[2] * profile.toXyz[2]![column]!,
    ),
  ) as [number[], number[], number[]];
  const [[rr, rg, rb], [gr, gg, gb], [br, bg, bb]] = m as unknown as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ];
  for (let at = 0; at < rgba.length; at += 4) {
    const red = r[rgba[at]!]!;
    const green = g[rgba[at + 1]!]!;
    const blue = b[rgba[at + 2]!]!;
    rgba[at] = encode(rr * red + rg * green + rb * blue);
    rgba[at + 1] = encode(gr * red + gg * green + gb * blue);
    rgba[at + 2] = encode(br * red + bg * green + bb * blue);
  }
}
