import { SeamgrainError } from '../../core/errors.js';
import { parsePointsMm } from '../../core/units/parsePointsMm.js';

type Region = readonly (readonly [number, number])[];

/** Reads one `--leave-out`: three or more corners `x,y x,y x,y` with units; adds it to the earlier ones. */
export function parseLeaveOut(text: string, earlier: readonly Region[] = []): readonly Region[] {
  const count = text.split(',').length - 1;
  if (count < 3) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' outlines no area.`,
      'Write three or more corners with units: "2in,1in 4in,1in 4in,3in".',
    );
  }
  const corners = parsePointsMm(text, count);
  return [...earlier, corners.map(({ xMm, yMm }) => [xMm, yMm] as const)];
}
