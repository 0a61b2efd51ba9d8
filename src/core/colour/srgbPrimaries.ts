/**
 * Linear sRGB to CIE XYZ with white at Y = 1: rows X, Y, Z.
 * Exact fractions that follow from the primaries and the D65 white (0.3127, 0.3290) of
 * IEC 61966-2-1 (printed so in CSS Color Module Level 4, section "Sample code").
 */
export const srgbToXyz = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
] as const;

/** XYZ of the D65 white, chromaticity (0.3127, 0.3290), Y = 1. */
export const whiteD65 = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329] as const;
