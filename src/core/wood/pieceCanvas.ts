/** The pixels of one piece while it is painted: optical density of the wood and of its pores. */
export interface PieceCanvas {
  /** Panel pixel of the canvas's upper left corner. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  readonly tone: Float32Array;
  readonly pores: Float32Array;
}
