import type { LayoutCut, PieceSize } from '../../results/layoutResult.js';
import { formatInches } from '../../units/formatInches.js';
import { formatMm } from '../../units/formatMm.js';
import { cutCautions } from './cutCautions.js';
import type { NumberedCut } from './numberCuts.js';
import type { RuleSetting } from './ruleSetting.js';
import type { SawLimits } from './sawLimits.js';
import type { WorkOnRule } from './settingsOnRule.js';
import type { PromisedPiece, SawStep } from './workSteps.js';

/** The saw steps as the contract's `cuts`, exact and as set on the rule, in words. */
export function layoutCuts(
  cuts: readonly NumberedCut[],
  onRule: WorkOnRule,
  kerfMm: number,
  limits: SawLimits,
): LayoutCut[] {
  return cuts.map(({ n, step, stepIndex, band, strip }) => {
    const setting = onRule.settings[stepIndex]!;
    const exact = step.makes.map(sizeOf) as [PieceSize, PieceSize];
    const asSet = onRule.run?.made[stepIndex]?.map(sizeOf) as [PieceSize, PieceSize] | undefined;
    return {
      n,
      kind: step.kind,
      workpiece: step.workpiece,
      reference: step.reference,
      fenceMm: step.fence.valueOf(),
      toBlade: step.toBlade,
      keeps: step.keeps,
      waste: wasteWords(step),
      note: noteWords(step, setting),
      setting: { text: setting.text, mm: setting.mm, errorMm: setting.errorMm },
      band: { fromMm: band.from.valueOf(), toMm: band.to.valueOf() },
      strip: strip?.name ?? null,
      makes: exact,
      makesAsSet: asSet ?? exact,
      cautions: cutCautions(step, kerfMm, limits, n === 1),
    };
  });
}

function sizeOf({ name, length, width }: PromisedPiece): PieceSize {
  return { name, lengthMm: length.valueOf(), widthMm: width.valueOf() };
}

/** The piece on the other side of the band from the one that is kept. */
function wasteWords(step: SawStep): string {
  const [inner, beyond] = step.makes;
  const payer = step.toBlade === 'near' ? beyond.name : nearestPiece(inner.name);
  return `${payer} side: the kerf comes off it, so that the ${step.keeps} keeps its full size whatever the blade's thickness`;
}

/** Of `upper rail + strip` the piece at the blade. */
function nearestPiece(name: string): string {
  return name.split(/ \+ | to /).at(-1)!;
}

function noteWords(step: SawStep, setting: RuleSetting): string {
  const guide = step.kind === 'rip' ? 'fence' : 'stop';
  const side =
    step.toBlade === 'near'
      ? `the near side of the blade (${guide} to the tooth facing it)`
      : `the far side of the blade (${guide} to the tooth facing away from it)`;
  return `Set ${setting.text} from the ${guide} to ${side}. ${errorWords(step, setting)}`;
}

function errorWords(step: SawStep, { errorMm }: RuleSetting): string {
  const size = Math.abs(errorMm);
  if (size < 1e-6) return 'On the mark.';
  const gained =
    size < 0.2 ? formatMm(size, 3) : `${formatInches(size, 64)} (${formatMm(size, 2)})`;
  return `Rounded: the ${step.keeps} gains ${gained}, the other side pays.`;
}
