/**
 * An sRGB picture, 8 bits a channel, interleaved: channel c of pixel (x, y) is
 * `data[3 * (y * width + x) + c]`. Alpha is flattened before a picture gets here.
 */
export interface RgbImage {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}
