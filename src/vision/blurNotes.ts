import type { RgbImage } from '../core/image/rgbImage.js';

const sampleCount = 200_000;
const longestLag = 8;
/**
 * Growth from which a picture counts as blurred. Six drawn woods and two photographs gave at most
 * 0.6 as taken, 0.7 to 1.3 after a Gaussian blur of 1.5 px, 1.1 to 1.7 after 2 px.
 */
const blurredGrowth = 1.3;
/** Width at half height of the Gaussian blur that reaches this growth at lags 1, 2, 4 (2 px sigma). */
const blurWidthPx = 4.7;

/**
 * Says so when the picture is blurred: nothing in it changes faster than a blur allows.
 *
 * The mean squared difference D(k) of pixels k apart grows as k^2 in a blurred picture and slower in
 * a sharp one; D(2) - D(1) and D(4) - D(2) are free of the camera's noise, which adds the same to
 * each. The growth log2((D(4) - D(2)) / (D(2) - D(1))) is taken along x or y, whichever crosses the
 * grain more (has the larger D(4)), since along the grain even sharp wood changes slowly.
 * @param image the rectified panel
 * @param pxPerMm its density
 */
export function blurNotes(image: RgbImage, pxPerMm: number): string[] {
  if (Math.min(image.width, image.height) <= 2 * longestLag) return [];
  const wide = isBlurredAt(image, 2);
  if (!wide && !isBlurredAt(image, 1)) return [];
  const finestMm = ((wide ? 2 : 1) * blurWidthPx) / pxPerMm;
  return [
    `The photo is blurred: nothing finer than about ${finestMm.toFixed(1)} mm shows, so fine grain and narrow glue lines cannot be judged.`,
  ];
}

function isBlurredAt(image: RgbImage, lag: number): boolean {
  const [alongX, alongY] = [3, 3 * image.width].map((step) =>
    [1, 2, 4].map((k) => meanSquareDifference(image, k * lag * step)),
  );
  const [one, two, four] = alongX[2] > alongY[2] ? alongX : alongY;
  return Math.log2((four - two) / (two - one)) > blurredGrowth;
}

/** Mean square difference of grey levels (red + 2 green + blue) `offset` bytes apart. */
function meanSquareDifference({ width, height, data }: RgbImage, offset: number): number {
  // Odd, so that the samples do not march in step with JPEG's blocks of 8.
  const stride = 2 * Math.floor(Math.sqrt((width * height) / sampleCount) / 2) + 1;
  let sum = 0;
  let count = 0;
  for (let y = 0; y < height - longestLag; y += stride) {
    const end = 3 * (y * width + width - longestLag);
    for (let i = 3 * y * width; i < end; i += 3 * stride) {
      const k = i + offset;
      const red = data[k] - data[i];
      const green = data[k + 1] - data[i + 1];
      const blue = data[k + 2] - data[i + 2];
      sum += (red + 2 * green + blue) ** 2;
      count++;
    }
  }
  return sum / count;
}
