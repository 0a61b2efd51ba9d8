import { existsSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { decodePhoto } from '../../dist/cli/io/decodePhoto.js';
import { speedChild } from './speedChild.js';
import { speedPicture } from './speedPicture.js';

/** One panel of the scaling tables. */
export interface ScalingRow {
  readonly areaM2: number;
  readonly megapixels: number;
  /** Joints found: each is measured, so a panel whose joint is missed costs less. */
  readonly joints: number;
  /** Best clock time of `score` on it, and of decoding its file alone. */
  readonly wallMs: number;
  readonly decodeMs: number;
}

/** How the cost of `score` grows. */
export interface Scaling {
  /** `score` on a panel so small that next to nothing is measured: start-up and loading code. */
  readonly tiny: ScalingRow;
  /** Larger and larger panels at `pxPerMm`. */
  readonly pxPerMm: number;
  readonly byArea: readonly ScalingRow[];
  /** One panel photographed with more and more pixels, all above the working density. */
  readonly byMegapixels: readonly ScalingRow[];
}

const repeats = 3;
const pxPerMm = 5;
const tinyMm: readonly [width: number, height: number] = [48, 36];
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
  const tinyPicture = await speedPicture(folder, ...tinyMm, pxPerMm);
  const tiny = await timeOf(bin, tinyPicture.photo, ...tinyMm);
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
  return { tiny, pxPerMm, byArea, byMegapixels };
}

async function timeOf(
  bin: string,
  photo: string,
  widthMm: number,
  heightMm: number,
): Promise<ScalingRow> {
  const size = `${widthMm}mmx${heightMm}mm`;
  let joints = 0;
  const score = async () => {
    const args = [bin, 'score', photo, '--size', size, '--json'];
    const run = await speedChild(process.execPath, args);
    if (run.status !== 0) throw new Error(`score failed on ${photo}: ${run.stdout}${run.stderr}`);
    joints = JSON.parse(run.stdout).seams.length;
    return run;
  };
  const wallMs = await best(score);
  const { width, height } = await sharp(photo).metadata();
  const bytes = readFileSync(photo);
  return {
    areaM2: (widthMm * heightMm) / 1e6,
    megapixels: (width * height) / 1e6,
    joints,
    wallMs,
    decodeMs: await best(async () => {
      const from = performance.now();
      await decodePhoto(bytes, photo);
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
