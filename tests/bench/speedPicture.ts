import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { drawPanel } from '../../dist/core/wood/drawPanel.js';
import { ripPanel } from '../../dist/core/wood/ripPanel.js';

/** The picture of the bench on disk: a drawn panel with one rip, as photo and as grey levels. */
export interface SpeedPicture {
  readonly photo: string;
  readonly grey: string;
  readonly width: number;
  readonly height: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Draws a panel of widthMm x heightMm at pxPerMm and keeps it in `folder` for the next run.
 *
 * @param folder out/bench or the like.
 */
export async function speedPicture(
  folder: string,
  widthMm: number,
  heightMm: number,
  pxPerMm: number,
): Promise<SpeedPicture> {
  const name = join(folder, `speed-${widthMm}x${heightMm}-${pxPerMm}`);
  const width = Math.round(widthMm * pxPerMm);
  const height = Math.round(heightMm * pxPerMm);
  const picture = {
    photo: `${name}.jpg`,
    grey: `${name}.gray`,
    width,
    height,
    widthMm,
    heightMm,
  };
  if (existsSync(picture.photo) && existsSync(picture.grey)) return picture;
  mkdirSync(folder, { recursive: true });
  const spec = ripPanel({
    board: {
      seed: 7,
      setting: 'ring-porous',
      cut: 'flatsawn',
      lengthMm: widthMm,
      widthMm: heightMm,
    },
    widthMm,
    heightMm,
    cuts: [{ atMm: 0.4 * heightMm, lostMm: 3.175 }],
  });
  const { image } = drawPanel(spec, { pxPerMm });
  const raw = { width, height, channels: 3 as const };
  await sharp(image.data, { raw }).jpeg({ quality: 92 }).toFile(picture.photo);
  writeFileSync(picture.grey, await sharp(image.data, { raw }).greyscale().raw().toBuffer());
  return picture;
}
