import type { MatrixProfile } from './matrixProfile.js';

const srgbCurve = Float64Array.from({ length: 256 }, (_, level) => {
  const x = level / 255;
  return x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4;
});

/**
 * Display P3 with the curve of sRGB: primaries of SMPTE EG 432-1, white D65, carried to D50 by
 * the Bradford transform; matrix from those chromaticities (tests/app/displayP3.test.ts redoes it).
 */
export const displayP3: MatrixProfile = {
  curves: [srgbCurve, srgbCurve, srgbCurve],
  toXyz: [
    [0.515102, 0.291965, 0.157153],
    [0.241182, 0.692236, 0.066582],
    [-0.00105, 0.041882, 0.784378],
  ],
};
