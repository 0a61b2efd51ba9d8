import { SeamgrainError } from '../../errors.js';
import type { GapResult } from '../../results/gapResult.js';
import { tidyNumbers } from '../../units/tidyNumbers.js';
import { changeUncertaintyMm } from './changeUncertaintyMm.js';
import { coefficientRange } from './coefficientRange.js';
import { frontSpecies } from './frontSpecies.js';
import type { GapInput } from './gapInput.js';
import { gapLooks } from './gapLooks.js';
import { gapNotes } from './gapNotes.js';
import { moistureOf } from './moistureOf.js';
import { placeGap } from './placeGap.js';
import { relativeUncertaintyMm } from './relativeUncertaintyMm.js';
import { surroundMovement } from './surroundMovement.js';
import { tangentialShare } from './tangentialShare.js';
import { widthMovement } from './widthMovement.js';

/** Green to ovendry along the grain is 0.1 to 0.2 % (Wood Handbook ch. 4): the larger, per 1 %. */
const longitudinalCoefficient = 0.002 / 30;

/**
 * Seasonal movement of a front in its opening, and the gap to leave.
 * Moisture contents from the air (Eq. 4-5), movement by Eq. (13-2) inside 6 to 14 % and (13-3)
 * outside, ring angle integrated over the width, against an opening that stays or moves.
 * @param input species, size across the grain, ring angle, climates
 * @returns the contract's `gap` document
 * @throws SeamgrainError `wrongUsage` for an unknown species or figures that cannot be
 */
export function computeGap(input: GapInput): GapResult {
  checkLengths(input);
  const front = frontSpecies(input);
  const rings = input.rings ?? { kind: 'class', cut: 'flatsawn' };
  const share = tangentialShare(rings, input.acrossMm);
  const mcFrom = moistureOf(input.from);
  const monthly = (input.months ?? []).map((climate) => moistureOf({ kind: 'climate', climate }));
  const mcTo = input.to ? moistureOf(input.to) : farthest(mcFrom, monthly);
  const own = (mc: number) => widthMovement(front, share, input.acrossMm, mcFrom, mc);
  const opening = (mc: number) => surroundMovement(input, mcFrom, mc);
  const relative = (mc: number) => own(mc).changeMm - opening(mc);
  const { changeMm, coefficient, equation } = own(mcTo);
  const range = coefficientRange(front, input.isVeneered ? null : rings, share, mcFrom, mcTo);
  const ringsRelative =
    coefficient > 0 ? Math.abs(range[1] - range[0]) / coefficient / Math.sqrt(12) : 0;
  const changeSeMm = changeUncertaintyMm(input.acrossMm, coefficient, changeMm, ringsRelative);
  // A front in a solid panel runs ahead of it by about 1 % moisture content.
  const lagMm = input.surround?.kind === 'solid' ? input.acrossMm * coefficient : 0;
  const moistures = [mcFrom, mcTo, ...monthly];
  const swings = moistures.map(relative);
  const most = Math.max(0, ...swings);
  const gapMm = most - Math.min(0, ...swings) + lagMm;
  const fittedMm = most + lagMm + (input.revealMm ?? 0);
  const driestMm = fittedMm - relative(Math.min(...moistures));
  const dampestMm = fittedMm - relative(Math.max(...moistures));
  const { lengthMm } = input;
  const facts = { front, moistures, equation, changeMm, relativeMm: relative(mcTo), lagMm };
  return tidyNumbers<GapResult>({
    schema: 'seamgrain/gap@1',
    species: front.botanical ? `${front.name} (${front.botanical})` : front.name,
    mcFrom,
    mcTo,
    coefficient,
    coefficientRange: range,
    changeMm,
    changeSeMm,
    openingChangeMm: opening(mcTo),
    gapMm,
    gapAmpleMm: gapMm + relativeUncertaintyMm(input, changeSeMm, opening(mcTo), lagMm),
    seasons: { fittedMm, driestMm, dampestMm },
    place: placeGap(fittedMm, input.place ?? 'top'),
    ends:
      lengthMm === undefined
        ? null
        : { lengthMm, changeMm: lengthMm * longitudinalCoefficient * (mcTo - mcFrom) },
    looks: gapLooks(driestMm, dampestMm, input.chamferMm ?? 0, input.distanceMm ?? 600),
    months: input.months
      ? monthly.map((mc, index) => ({
          month: index + 1,
          mc,
          changeMm: own(mc).changeMm,
          gapMm: fittedMm - relative(mc),
        }))
      : null,
    equation:
      equation === '13-2'
        ? 'Wood Handbook Eq. (13-2): change = across x C x (mcTo - mcFrom)'
        : 'Wood Handbook Eq. (13-3): change = across x (mcTo - mcFrom) / (100 f / S - f + mcFrom)',
    source: `FPL Wood Handbook (GTR-190/282), Tables 4-3, 4-4, 13-5, Eq. (4-5); ${front.name}: ${front.marks}`,
    notes: gapNotes(input, facts),
  });
}

function farthest(mcFrom: number, monthly: readonly number[]): number {
  if (monthly.length === 0) {
    throw new SeamgrainError(
      'wrongUsage',
      'only one state of the wood was given',
      'give the climate or moisture content at both ends of the year, or the months',
    );
  }
  return monthly.reduce((a, b) => (Math.abs(b - mcFrom) > Math.abs(a - mcFrom) ? b : a));
}

function checkLengths({ acrossMm, revealMm, chamferMm, lengthMm, distanceMm, months }: GapInput) {
  const positive = [acrossMm, lengthMm ?? 1, distanceMm ?? 1];
  const notNegative = [revealMm ?? 0, chamferMm ?? 0];
  if (positive.some((mm) => !(mm > 0)) || notNegative.some((mm) => !(mm >= 0))) {
    throw new SeamgrainError(
      'wrongUsage',
      'a size is zero or negative',
      'sizes are above 0, reveal and chamfer 0 or more',
    );
  }
  if (months && (months.length === 0 || months.length > 12)) {
    throw new SeamgrainError('wrongUsage', `${months.length} months`, 'give one to twelve months');
  }
}
