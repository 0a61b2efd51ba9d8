import { SeamgrainError } from '../../core/errors.js';
import type { CornersPx, PhotoScale } from '../../core/image/photoScale.js';
import type { SizeMm } from '../../core/units/parseSizeMm.js';

/** The photo options as commander hands them over. */
export interface PhotoOptions {
  readonly size?: SizeMm | undefined;
  readonly corners?: CornersPx | undefined;
  readonly pxPerMm?: number | undefined;
  readonly known?: Extract<PhotoScale, { kind: 'known' }> | undefined;
}

const waysHint =
  'Give one of: --size LENGTHxLENGTH (with --corners unless the whole frame is the panel), --px-per-mm NUMBER, --known "x,y x,y LENGTH".';

/**
 * The photo's scale from the options.
 * @throws SeamgrainError wrongUsage when none, or more than one, was given
 */
export function photoScaleOf({ size, corners, pxPerMm, known }: PhotoOptions): PhotoScale {
  const ways = [size, pxPerMm, known].filter((way) => way !== undefined).length;
  if (ways === 0) throw new SeamgrainError('wrongUsage', 'The photo has no scale.', waysHint);
  if (ways > 1) throw new SeamgrainError('wrongUsage', 'The photo has two scales.', waysHint);
  if (corners && !size) {
    throw new SeamgrainError(
      'wrongUsage',
      '--corners needs --size, the real size of the panel.',
      waysHint,
    );
  }
  if (size) return { kind: 'size', ...size, cornersPx: corners ?? null };
  return known ?? { kind: 'pxPerMm', pxPerMm: pxPerMm as number };
}
