/** The panel in linear light while its pieces are put together. */
export interface PanelCanvas {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  /** Interleaved linear red, green, blue. */
  readonly light: Float32Array;
  /** Share of each pixel covered by wood, 0 to 1. */
  readonly covered: Float32Array;
}
