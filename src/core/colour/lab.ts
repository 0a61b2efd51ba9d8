/** A CIE 1976 colour (L*, a*, b*) against the D65 white of sRGB; L* is 0 to 100. */
export type Lab = readonly [lightness: number, a: number, b: number];
