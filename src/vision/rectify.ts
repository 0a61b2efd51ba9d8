import { SeamgrainError } from '../core/errors.js';
import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { PhotoScale } from '../core/image/photoScale.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import type { Progress } from '../core/progress.js';
import { blurNotes } from './blurNotes.js';
import { knownPxPerMm } from './knownPxPerMm.js';
import type { OpenCvSource } from './openCv.js';
import { rectifyByCorners } from './rectifyByCorners.js';
import { rectifyWholeFrame } from './rectifyWholeFrame.js';

/** Enough for a 1/8 in kerf to be 22 px wide; more only costs time (method section 1). */
export const defaultMaxPxPerMm = 7;

/** What `rectify` needs beside the photo and its scale. */
export interface RectifyOptions {
  /** Loads OpenCV; asked only when corners are given. */
  readonly vision: OpenCvSource;
  readonly progress?: Progress;
  /** Working density at most, px/mm, default 7. The photo is never upsampled to reach it. */
  readonly maxPxPerMm?: number;
}

/**
 * Turns a photo into the panel: square on, one scale, at the density that the wood needs.
 * @param photo sRGB, right way up, alpha flattened
 * @param scale one of the three ways to give the scale
 * @returns the panel; its notes say what the photo is too poor for
 * @throws SeamgrainError badPanel, badPhoto when scale and photo cannot belong together
 */
export async function rectify(
  photo: RgbImage,
  scale: PhotoScale,
  { vision, progress = () => {}, maxPxPerMm = defaultMaxPxPerMm }: RectifyOptions,
): Promise<PanelPhoto> {
  progress(0, 'squaring the panel up');
  const panel = await squareUp(photo, scale, vision, maxPxPerMm);
  return { ...panel, notes: [...panel.notes, ...blurNotes(panel.image, panel.pxPerMm)] };
}

async function squareUp(
  photo: RgbImage,
  scale: PhotoScale,
  vision: OpenCvSource,
  maxPxPerMm: number,
): Promise<PanelPhoto> {
  if (scale.kind === 'size') {
    const widthMm = positive(scale.widthMm, "The panel's length");
    const heightMm = positive(scale.heightMm, "The panel's width");
    if (!scale.cornersPx) return rectifyWholeFrame(photo, widthMm, heightMm, maxPxPerMm);
    const { cv } = await vision();
    return rectifyByCorners(cv, photo, scale.cornersPx, widthMm, heightMm, maxPxPerMm);
  }
  const pxPerMm =
    scale.kind === 'known' ? knownPxPerMm(scale, photo) : positive(scale.pxPerMm, 'The px/mm');
  return rectifyWholeFrame(photo, photo.width / pxPerMm, photo.height / pxPerMm, maxPxPerMm);
}

function positive(value: number, what: string): number {
  if (Number.isFinite(value) && value > 0) return value;
  throw new SeamgrainError('badPanel', `${what} must be more than zero.`, 'Check the size given.');
}
