import type { TableBoard } from './jointTable.js';

/** What a maker would call a board: its photo's name without folder and ending. */
export function boardCalled({
  photos,
  isImagined,
}: Pick<TableBoard, 'photos'> & Partial<Pick<TableBoard, 'isImagined'>>): string {
  const name = photos[0]
    .replace(/^.*[\\/]/, '')
    .replace(/\.(jpe?g|png|webp|tiff?|avif|heic)$/i, '');
  return isImagined ? `${name}'s mate` : name;
}

/** `a`, `a and b`, `a, b and c`. */
export function listNames(names: readonly string[]): string {
  return names.length < 2
    ? (names[0] ?? '')
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
