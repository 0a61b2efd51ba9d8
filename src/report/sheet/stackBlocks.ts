import type { Block } from './block.js';
import { moveMark } from './moveMark.js';

/** Blocks one below the other. */
export function stackBlocks(blocks: readonly Block[], gapPx = 0): Block {
  let y = 0;
  const marks = blocks.flatMap((block, index) => {
    const top = y + (index > 0 ? gapPx : 0);
    y = top + block.heightPx;
    return block.marks.map((mark) => moveMark(mark, 0, top));
  });
  return { heightPx: y, marks };
}
