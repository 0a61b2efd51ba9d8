import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { Progress } from '../../core/progress.js';
import { runJob } from '../../job/runJob.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { type PhotoOptions, photoScaleOf } from '../options/photoScaleOf.js';
import { readPhoto } from './readPhoto.js';

/**
 * Reads a photo and squares its panel up.
 * @param path of the photo
 * @param options how its scale was given
 * @returns the panel, with the notes of file and photo alike
 */
export async function loadPanel(
  path: string,
  options: PhotoOptions,
  progress: Progress,
): Promise<PanelPhoto> {
  const scale = photoScaleOf(options);
  if (scale.kind === 'size' && scale.cornersPx) startLoadingOpenCv();
  const { image, notes } = await readPhoto(path);
  const panel = await runJob('rectify', { photo: image, scale }, { vision: loadOpenCv, progress });
  return { ...panel, notes: [...notes, ...panel.notes] };
}

/** OpenCV loads while the photo is decoded; a failure comes up again where it is awaited. */
function startLoadingOpenCv(): void {
  loadOpenCv().catch(() => {});
}
