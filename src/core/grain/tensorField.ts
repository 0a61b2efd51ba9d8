/**
 * Structure tensor on a grid: how strongly the picture changes, and along which direction.
 *
 * Sample (X, Y) is number Y * width + X and sits at full-size pixel
 * ((X + 0.5) stepPx - 0.5, (Y + 0.5) stepPx - 0.5), where whole numbers are pixel centres;
 * in pixel edges, as millimetres are counted, that is ((X + 0.5) stepPx, (Y + 0.5) stepPx).
 * Values are means of gradient products, per full-size pixel squared.
 */
export interface TensorField {
  readonly width: number;
  readonly height: number;
  /** Full-size pixels between samples. */
  readonly stepPx: number;
  readonly jxx: Float32Array;
  readonly jxy: Float32Array;
  readonly jyy: Float32Array;
}
