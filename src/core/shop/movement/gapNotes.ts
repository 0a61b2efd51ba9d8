import { lengthWords } from '../../units/lengthWords.js';
import type { GapInput } from './gapInput.js';
import type { WoodSpecies } from './woodSpecies.js';

/** What a note needs to know of the computed gap. */
export interface GapFacts {
  readonly front: WoodSpecies;
  readonly moistures: readonly number[];
  readonly equation: '13-2' | '13-3';
  readonly changeMm: number;
  readonly relativeMm: number;
  readonly lagMm: number;
}

/** What the gap rests on and where it may be wrong, in the maker's words. */
export function gapNotes(input: GapInput, facts: GapFacts): string[] {
  const { front, moistures, equation, changeMm, relativeMm, lagMm } = facts;
  const notes = [
    'Moisture contents from air are good to about 1 %: the sorption data are averages, and wood that was wetter before stays 1 to 4 % wetter for long.',
  ];
  if (equation === '13-3') {
    notes.push('A moisture content lies outside 6 to 14 %: Eq. (13-3) instead of (13-2).');
  }
  if (/commercial/.test(front.marks)) {
    notes.push(
      `Coefficients of ${front.name} are the handbook’s commercial group, which moves differently from this species alone: ${front.marks}.`,
    );
  } else if (/\[M\]/.test(front.marks)) {
    notes.push(`Part of the figures for ${front.name} are from memory: ${front.marks}.`);
  }
  if (Math.max(...moistures) > front.fibreSaturationPercent) {
    notes.push(
      `Above ${front.fibreSaturationPercent} % (fibre saturation) nothing swells any more.`,
    );
  }
  if (input.rings?.kind === 'class' || !input.rings) {
    notes.push(
      'Cut classes by ring angle as in Architectural Woodwork Standards (2009): flatsawn 0 to 30, rift 30 to 60, quartered 60 to 90 degrees. Flatsawn is taken at 0, rift at 45, quartered at 90; the give or take spans the class.',
    );
  }
  notes.push(...humidityNotes(input));
  if (input.surround?.kind === 'solid') {
    notes.push(
      `The opening moves with its panel; what is left is the difference. ${lengthWords(lagMm)} is added because a front follows the air faster than the panel round it, by about 1 % (common practice, no published source).`,
    );
    if (relativeMm < 0 && changeMm >= 0) {
      notes.push('The opening grows more than the front does: the front binds in the dry season.');
    }
  } else if (changeMm < 0) {
    notes.push(
      'The front is at its widest as fitted: it may be fitted close, and the gap opens later.',
    );
  }
  return notes;
}

function humidityNotes({ from, to, months }: GapInput): string[] {
  const states = [from, ...(to ? [to] : [])];
  const airs = [
    ...states.flatMap((state) => (state.kind === 'climate' ? [state.climate] : [])),
    ...(months ?? []),
  ];
  const notes: string[] = [];
  if (airs.some(({ relativeHumidityPercent: rh }) => rh < 5 || rh > 95)) {
    notes.push('The published table spans 5 to 95 % relative humidity; outside it is a guess.');
  }
  if (months) {
    notes.push(
      'Months are equilibria: finished wood lags by weeks and never quite reaches the extremes, so the year is on the safe side.',
    );
  }
  return notes;
}
