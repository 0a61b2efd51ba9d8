import type { RgbImage } from '../image/rgbImage.js';

/** One piece: its rectangle on the uncut panel and where its corner goes, mm. */
export interface ReglueMove {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
  readonly toXMm: number;
  readonly toYMm: number;
}

/** How the pieces lie after gluing up. */
export interface ReglueSpec {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly moves: readonly ReglueMove[];
}

/** What shows through an open gap: the dark of a drawer. */
const gapColour = [34, 29, 26] as const;

/**
 * The face as it would look after the cuts: every piece copied to its place, whole pixels, so
 * that the grain stays as sharp as the photo has it; what no piece covers is dark.
 *
 * @param image the uncut panel. @param pxPerMm its scale.
 */
export function reglue(image: RgbImage, pxPerMm: number, spec: ReglueSpec): RgbImage {
  const px = (mm: number) => Math.round(mm * pxPerMm);
  const width = Math.max(1, px(spec.widthMm));
  const height = Math.max(1, px(spec.heightMm));
  const data = new Uint8ClampedArray(3 * width * height);
  for (let i = 0; i < data.length; i += 3) data.set(gapColour, i);
  for (const move of spec.moves) copyPiece(image, { width, height, data }, move, px);
  return { width, height, data };
}

function copyPiece(
  from: RgbImage,
  to: { readonly width: number; readonly height: number; readonly data: Uint8ClampedArray },
  move: ReglueMove,
  px: (mm: number) => number,
): void {
  const [left, top] = [px(move.toXMm), px(move.toYMm)];
  const right = px(move.toXMm + move.x2Mm - move.x1Mm);
  const bottom = px(move.toYMm + move.y2Mm - move.y1Mm);
  const [dx, dy] = [px(move.x1Mm) - left, px(move.y1Mm) - top];
  const x1 = Math.max(0, left, -dx);
  const x2 = Math.min(to.width, right, from.width - dx);
  if (x2 <= x1) return;
  for (let y = Math.max(0, top, -dy); y < Math.min(to.height, bottom, from.height - dy); y++) {
    const source = 3 * ((y + dy) * from.width + x1 + dx);
    to.data.set(from.data.subarray(source, source + 3 * (x2 - x1)), 3 * (y * to.width + x1));
  }
}
