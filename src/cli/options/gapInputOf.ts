import { SeamgrainError } from '../../core/errors.js';
import type { GapInput, WoodState } from '../../core/shop/movement/gapInput.js';
import type { RingAngles } from '../../core/shop/movement/ringAngles.js';
import type { Climate } from '../../core/units/parseClimate.js';

/** The options of `addGapOptions`, read. */
export interface GapOptions {
  readonly species?: string | undefined;
  readonly shrinkage?: { radial: number; tangential: number } | undefined;
  readonly ringAngle?: RingAngles | undefined;
  readonly from?: Climate | undefined;
  readonly to?: Climate | undefined;
  readonly mcFrom?: number | undefined;
  readonly mcTo?: number | undefined;
  readonly months?: readonly Climate[] | undefined;
  readonly surround?: string | undefined;
  readonly veneered?: true | undefined;
  readonly reveal?: number | undefined;
  readonly chamfer?: number | undefined;
  readonly place?: 'top' | 'bottom' | 'split' | undefined;
}

/**
 * The gap question that the options ask.
 * @param acrossMm the front's size across the grain, mm
 * @param usual surround where none is given
 * @throws SeamgrainError wrongUsage when the species or the first state is missing
 */
export function gapInputOf(
  options: GapOptions,
  acrossMm: number,
  usual: 'framed' | 'same' = 'framed',
): GapInput {
  const { species, shrinkage, ringAngle, months, reveal, chamfer, place } = options;
  const surround = options.surround ?? usual;
  const from = stateOf(options.from, options.mcFrom, 'from');
  const to = stateOf(options.to, options.mcTo, 'to');
  if (!species && !shrinkage && !options.veneered) throw missing('--species', 'hard maple');
  if (!from) throw missing('--from', '35%@70F, or --mc-from 8%');
  if (!to && !months) throw missing('--to', '80%@21C, --mc-to 12% or --months');
  return {
    species: species ?? 'wood of the given shrinkage',
    acrossMm,
    from,
    ...(to && { to }),
    ...(shrinkage && { shrinkagePercent: shrinkage }),
    ...(ringAngle && { rings: ringAngle }),
    ...(months && { months }),
    ...(surround !== 'framed' && { surround: solid(surround) }),
    ...(options.veneered && { isVeneered: true }),
    ...(reveal !== undefined && { revealMm: reveal }),
    ...(chamfer !== undefined && { chamferMm: chamfer }),
    ...(place && { place }),
  };
}

function solid(surround: string): NonNullable<GapInput['surround']> {
  return surround === 'same' || surround === 'solid'
    ? { kind: 'solid' }
    : { kind: 'solid', species: surround };
}

function stateOf(
  climate: Climate | undefined,
  percent: number | undefined,
  word: string,
): WoodState | null {
  if (climate && percent !== undefined) {
    throw new SeamgrainError(
      'wrongUsage',
      `--${word} and --mc-${word} were both given`,
      'give the air or the moisture content, not both',
    );
  }
  if (climate) return { kind: 'climate', climate };
  return percent === undefined ? null : { kind: 'moisture', percent };
}

function missing(option: string, example: string): SeamgrainError {
  return new SeamgrainError('wrongUsage', `${option} is missing`, `add ${option} ${example}`);
}
