import { existsSync } from 'node:fs';
import sharp from 'sharp';
import { speedChild } from './speedChild.js';
import { speedPicture } from './speedPicture.js';

/** One panel of the scaling tables. */
export interface ScalingRow {
  readonly areaM2: number;
  readonly megapixels: number;
  /** Best clock time of `score` on it, and of decoding its file alone. */
  readonly wallMs: number;
  readonly decodeMs: number;
}

/** How the cost of `score` grows. */
export interface Scaling {
  /** `score --help`: what starting costs before anything is measured. */
  readonly startMs: number;
  /** Larger and larger panels at `pxPerMm`. */
  readonly pxPerMm: number;
  readonly byArea: readonly ScalingRow[];
  /** One panel photographed with more and more pixels, all above the working density. */
  readonly byMegapixels: readonly ScalingRow[];
}

const repeats = 2;
const pxPerMm = 5;
const sizesMm: readonly (readonly [width: number, height: number])[] = [
  [164, 122],
  [283, 212],
  [516, 388],
  [816, 612],
  [1155, 866],
];
/** 7 px/mm is all that is used (`defaultMaxPxPerMm`). */
const densities: readonly number[] = [7, 10, 14];

/** Times `score` on drawn panels of 0.02 to 1 m2, and on one panel at rising densities. */
export async function speedScaling(folder: string, bin: string): Promise<Scaling> {
  const byArea: ScalingRow[] = [];
  for (const [widthMm, heightMm] of sizesMm) {
    const { photo } = await speedPicture(folder, widthMm, heightMm, pxPerMm);
    byArea.push(await timeOf(bin, photo, widthMm, heightMm));
  }
  const byMegapixels: ScalingRow[] = [];
  const [widthMm, heightMm] = sizesMm[2];
  const drawn = await speedPicture(folder, widthMm, heightMm, densities[0]);
  for (const density of densities) {
    const photo = await enlarged(drawn.photo, Math.round(widthMm * density));
    byMegapixels.push(await timeOf(bin, photo, widthMm, heightMm));
  }
  const help = () => speedChild(process.execPath, [bin, 'score', '--help']);
  return { startMs: await best(help), pxPerMm, byArea, byMegapixels };
}

async function timeOf(
  bin: string,
  photo: string,
  widthMm: number,
  heightMm: number,
): Promise<ScalingRow> {
  const size = `${widthMm}mmx${heightMm}mm`;
  const score = () => speedChild(process.execPath, [bin, 'score', photo, '--size', size, '--json']);
  const { width, height } = await sharp(photo).metadata();
  return {
    areaM2: (widthMm * heightMm) / 1e6,
    megapixels: (width * height) / 1e6,
    wallMs: await best(score),
    decodeMs: await best(async () => {
      const from = performance.now();
      await sharp(photo).raw().toBuffer();
      return { wallMs: performance.now() - from };
    }),
  };
}

async function best(run: () => Promise<{ readonly wallMs: number }>): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < repeats; k++) least = Math.min(least, (await run()).wallMs);
  return least;
}

/** The same photo with more pixels: what a better camera adds costs time, not what it shows. */
async function enlarged(photo: string, widthPx: number): Promise<string> {
  const name = photo.replace(/\.jpg$/, `-${widthPx}px.jpg`);
  if (!existsSync(name)) await sharp(photo).resize(widthPx).jpeg({ quality: 92 }).toFile(name);
  return name;
}
