import type { PanelPlanes } from '../seam/seamWood.js';
import type { ScoreOptions } from './scoreOptions.js';

/** Grain whose lines stand out less than this from their ground is no grain to a camera (rms). */
const leastContrast = 0.004;

/** What the picture as a whole could not tell, in the user's words. */
export function photoNotes(
  planes: PanelPlanes,
  seamCount: number,
  options: ScoreOptions,
): string[] {
  const notes: string[] = [];
  if (!showsGrain(planes)) {
    notes.push(
      'Cannot tell: almost no grain lines show in this photo. Is it wood, in focus and well lit?',
    );
  }
  if (seamCount === 0 && options.find) {
    notes.push(
      'No joint found. A joint whose colour and grain run through cannot be seen in a photo; place it by hand to measure it.',
    );
  }
  return notes;
}

/** Whether grain lines stand out enough in the photo to be judged at all. */
export function showsGrain(planes: PanelPlanes): boolean {
  return localContrast(planes) >= leastContrast;
}

/** rms difference of log luminance over 2 mm, from a sparse sample: about the lines' contrast. */
function localContrast({ logLuminance, pxPerMm }: PanelPlanes): number {
  const { width, height, data } = logLuminance;
  const step = Math.max(1, Math.round(2 * pxPerMm));
  let sum = 0;
  let count = 0;
  for (let y = 0; y + step < height; y += step) {
    for (let x = 0; x + step < width; x += step) {
      const here = data[y * width + x];
      sum += (data[(y + step) * width + x] - here) ** 2 + (data[y * width + x + step] - here) ** 2;
      count += 2;
    }
  }
  return Math.sqrt(sum / Math.max(1, count) / 2);
}
