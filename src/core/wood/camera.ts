import type { CornersPx } from '../image/photoScale.js';

/** How an imagined photograph is taken. Everything but size and corners may be left out. */
export interface Camera {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Where the panel's corners fall in the photo, clockwise from the panel's top left. */
  readonly cornersPx: CornersPx;
  /** Light across the frame: brightness change from left to right and top to bottom, default 0. */
  readonly lightAcross?: number;
  readonly lightDown?: number;
  /** Share of light lost in the frame's corners, default 0. */
  readonly vignette?: number;
  /** Factor on all light, default 1. */
  readonly exposure?: number;
  /** Factors on red, green and blue (white balance off by so much), default 1, 1, 1. */
  readonly whiteBalance?: readonly [number, number, number];
  /** Blur of lens and focus, standard deviation in photo px, default 0. */
  readonly blurPx?: number;
  /** Electrons of a full pixel; shot noise is its square root. Default no shot noise. */
  readonly fullWell?: number;
  /** Read noise, share of full light, default 0. */
  readonly readNoise?: number;
  /** sRGB of the bench behind the panel, default a grey brown. */
  readonly background?: readonly [number, number, number];
  /** Whole number for noise and bench, default 1. */
  readonly seed?: number;
}
