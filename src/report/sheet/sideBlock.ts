import type { Block } from './block.js';
import { gapBlock } from './gapBlock.js';
import { moveMark } from './moveMark.js';
import { pictureBlock } from './pictureBlock.js';
import type { SheetInput } from './sheetInput.js';
import type { SheetStyle } from './sheetStyle.js';
import { stackBlocks } from './stackBlocks.js';

/** A photograph smaller than this shows nothing, px. */
const leastPicturePx = 70;
const tallestPicturePx = 170;

/**
 * What stands beside the drawing: photograph and gap; null when there is neither.
 * The photograph gives way to the height that there is.
 */
export function sideBlock(
  { layout, gap, picture }: SheetInput,
  x: number,
  widthPx: number,
  heightPx: number,
  style: SheetStyle,
): Block | null {
  const space = 0.6 * style.bodyPx;
  const words = gap ? gapBlock(gap, layout, 0, widthPx, style) : null;
  const room = heightPx - (words ? words.heightPx + space : 0);
  const tallest = Math.min(tallestPicturePx, Math.max(leastPicturePx, room - 2));
  const blocks = [
    ...(picture ? [pictureBlock(layout, picture, 0, widthPx, tallest)] : []),
    ...(words ? [words] : []),
  ];
  if (blocks.length === 0) return null;
  const stack = stackBlocks(blocks, space);
  return { ...stack, marks: stack.marks.map((mark) => moveMark(mark, x, 0)) };
}
