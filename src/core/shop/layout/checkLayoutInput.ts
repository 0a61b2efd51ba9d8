import { z } from 'zod';
import { SeamgrainError } from '../../errors.js';
import type { LayoutInput } from './layoutInput.js';

const size = z.object({ lengthMm: z.number().positive(), widthMm: z.number().positive() });
const amount = z.number().nonnegative().optional();
const figures = z.object({
  panel: size,
  fronts: z.array(z.object({ ...size.shape, xMm: z.number(), yMm: z.number() })).min(1),
  kerfMm: z.number().positive().max(20).optional(),
  dressMm: amount,
  trimMm: amount,
  trimEndsMm: amount,
  endSlideMm: z
    .object({ leftMm: z.number().nonnegative(), rightMm: z.number().nonnegative() })
    .optional(),
  face: size.optional(),
  thickness: z
    .object({ roughMm: z.number().positive(), finishedMm: z.number().positive() })
    .optional(),
});

/**
 * Refuses figures that no layout can have: negative, not finite, a slide of more than a kerf.
 * @throws SeamgrainError `wrongUsage`
 */
export function checkLayoutInput(input: LayoutInput): void {
  const checked = figures.safeParse(input);
  if (!checked.success) {
    const issue = checked.error.issues[0]!;
    throw new SeamgrainError(
      'wrongUsage',
      `${issue.path.join('.') || 'layout'}: ${issue.message}`,
      'lengths are millimetres, sizes above 0, allowances 0 or more, the kerf below 20 mm',
    );
  }
  const kerfMm = input.kerfMm ?? 3.175;
  const { leftMm, rightMm } = input.endSlideMm ?? { leftMm: 0, rightMm: 0 };
  if (Math.max(leftMm, rightMm) > kerfMm + (input.trimEndsMm ?? input.trimMm ?? 0)) {
    throw new SeamgrainError(
      'wrongUsage',
      'an end piece cannot slide further than the kerf and its trim leave room for',
      'give a slide between 0 and one kerf',
    );
  }
}
