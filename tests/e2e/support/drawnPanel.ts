import sharp from 'sharp';

/** A drawn photo whose panel and joint are known exactly. */
export interface DrawnPanel {
  readonly png: Buffer;
  readonly width: number;
  readonly height: number;
  /** Outline of the panel, photo pixels. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Where the strip is missing. */
  readonly jointY: number;
}

/**
 * Slanted lines on a grey bench; below the joint the pattern is shifted up by `lostPx`, as if a
 * strip of that height were gone.
 */
export async function drawnPanel({
  width = 2000,
  height = 1200,
  lostPx = 15,
} = {}): Promise<DrawnPanel> {
  const [left, top, right, bottom] = [200, 150, width - 200, height - 150];
  const jointY = Math.round((top + bottom) / 2);
  const pixels = Buffer.alloc(width * height * 3, 92);
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const phase = (y < jointY ? y : y + lostPx) - 0.1 * x;
      const wave = Math.sin(phase / 3.1) + 0.6 * Math.sin(phase / 7.7 + Math.sin(x / 220));
      const speck = 9 * Math.sin(12.9898 * x + 78.233 * y) * Math.sin(3.7 * x - 1.3 * y);
      const level = 165 + 22 * wave + speck;
      const at = 3 * (y * width + x);
      pixels[at] = level;
      pixels[at + 1] = level * 0.82;
      pixels[at + 2] = level * 0.6;
    }
  }
  const png = await sharp(pixels, { raw: { width, height, channels: 3 } })
    .png()
    .toBuffer();
  return { png, width, height, left, top, right, bottom, jointY };
}
