import type { ArrangedBoard } from '../../core/results/arrangeResult.js';
import { photoName } from '../words/photoName.js';

/** What a maker would call a board; `most` letters as in `photoName`. */
export function boardName(
  { photo, isImagined }: Pick<ArrangedBoard, 'photo' | 'isImagined'>,
  most?: number,
): string {
  return isImagined ? `${photoName(photo, most)}’s mate` : photoName(photo, most);
}

/** How it lies against its photo: `turned end for end, other face up`; empty as photographed. */
export function boardLie({ turned, face }: Pick<ArrangedBoard, 'turned' | 'face'>): string {
  return [turned ? 'turned end for end' : '', face === 'B' ? 'other face up' : '']
    .filter(Boolean)
    .join(', ');
}
