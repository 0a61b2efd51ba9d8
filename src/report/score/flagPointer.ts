import type { Box } from '../draw/box.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from './scoreFrame.js';
import type { SeamTrack } from './seamTrack.js';

/** A flag's pointer: its drawing, and the boxes of its triangle with its leader. */
export interface FlagPointer {
  readonly svg: string;
  readonly box: Box;
}

/** A triangle whose tip stops short of the joint, tied to its chip by a thin leader. */
export function flagPointer(
  at: { readonly x: number; readonly y: number },
  { outX, outY }: SeamTrack,
  chip: Box,
  { gapPx, bandPx }: ScoreFrame,
): FlagPointer {
  const [chipX, chipY] = [chip.x + chip.width / 2, chip.y + chip.height / 2];
  const side = (chipX - at.x) * outX + (chipY - at.y) * outY > 0 ? 1 : -1;
  const tipOut = side * (side === 1 ? gapPx + bandPx + 2 : 3.5);
  const [tipX, tipY] = [at.x + outX * tipOut, at.y + outY * tipOut];
  const [footX, footY] = [tipX + outX * side * 9, tipY + outY * side * 9];
  const corner = (way: 1 | -1) => [footX - outY * way * 4.5, footY + outX * way * 4.5] as const;
  const [left, right] = [corner(1), corner(-1)];
  const nearX = Math.min(Math.max(footX, chip.x), chip.x + chip.width);
  const nearY = Math.min(Math.max(footY, chip.y), chip.y + chip.height);
  const line = `M${px(footX)} ${px(footY)}L${px(nearX)} ${px(nearY)}`;
  const leader = `<path d="${line}" stroke="#ffffff" stroke-width="3"/><path d="${line}" stroke="#161616" stroke-width="1.2"/>`;
  const triangle = `<path d="M${px(tipX)} ${px(tipY)}L${px(left[0])} ${px(left[1])}L${px(right[0])} ${px(right[1])}Z" fill="#161616" stroke="#ffffff" stroke-width="1.2" stroke-linejoin="round"/>`;
  const xs = [tipX, left[0], right[0], nearX];
  const ys = [tipY, left[1], right[1], nearY];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return {
    svg: leader + triangle,
    box: { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y },
  };
}
