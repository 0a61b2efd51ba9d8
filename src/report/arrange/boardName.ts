import type { ArrangedBoard } from '../../core/results/arrangeResult.js';

/** What a maker would call a board: its photo's name without folder and ending. */
export function boardName({ photo, isImagined }: Pick<ArrangedBoard, 'photo' | 'isImagined'>) {
  const name = photo.replace(/^.*[\\/]/, '').replace(/\.[a-z0-9]+$/i, '');
  return isImagined ? `${name}, its mate` : name;
}

/** How it lies against its photo: `turned end for end, other face up`; empty as photographed. */
export function boardLie({ turned, face }: Pick<ArrangedBoard, 'turned' | 'face'>): string {
  return [turned ? 'turned end for end' : '', face === 'B' ? 'other face up' : '']
    .filter(Boolean)
    .join(', ');
}
