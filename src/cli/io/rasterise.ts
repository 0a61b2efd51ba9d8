import sharp from 'sharp';

/** Two picture pixels to each of the drawing's, so that small print stays sharp. */
const dotsPerInch = 2 * 72;

/** An SVG drawing as PNG. */
export async function rasterise(svg: string): Promise<Buffer> {
  return sharp(Buffer.from(svg), { density: dotsPerInch, limitInputPixels: false })
    .png()
    .toBuffer();
}
