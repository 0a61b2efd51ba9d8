import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { VisibilityWord } from '../../core/results/visibilityResult.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { visibilityRamp } from '../ramp/visibilityRamp.js';
import { capitalise } from './capitalise.js';
import { countWord } from './countWord.js';
import { joinWords } from './joinWords.js';
import type { LengthUnits } from './lengthUnits.js';
import type { PlacedSeam } from './placedSeam.js';
import { placeSeams } from './placeSeams.js';
import { reasonFor } from './reasonFor.js';
import { visibilityClause } from './visibilityClause.js';
import { worstPlaceText } from './worstPlaceText.js';

interface Group {
  readonly word: VisibilityWord | null;
  readonly seams: readonly PlacedSeam[];
}

/**
 * The answer in one breath: `Two joints. The upper one disappears; the lower shows from as far as
 * 6 1/2 ft, worst 14 3/8 in from the left, where the lines step 3/32 in.`
 */
export function headlineOfScore(result: ScoreResult, units: LengthUnits): string {
  const placed = placeSeams(result);
  if (placed.length === 0) return noneFound(result);
  const groups = groupByWord(placed);
  const worst = worstOf(placed);
  const clauses =
    placed.length > 4 ? countedClauses(groups, worst, units) : namedClauses(groups, worst, units);
  return `${countOfSeams(placed)}. ${capitalise(clauses)}.`;
}

function noneFound({ notes }: ScoreResult): string {
  const reason = reasonFor(notes.filter((note) => !note.startsWith('No joint found')));
  const why = reason ? `: ${reason}` : '';
  return `No joint found${why}. If you know where one is, place it by hand.`;
}

function countOfSeams(placed: readonly PlacedSeam[]): string {
  const count = (noun: PlacedSeam['noun']) => {
    const many = placed.filter((one) => one.noun === noun).length;
    return many === 0 ? '' : `${countWord(many)} ${noun}${many === 1 ? '' : 's'}`;
  };
  return capitalise(joinWords([count('joint'), count('crosscut')].filter(Boolean)));
}

/** Quiet groups first, the loudest last, and what cannot be told after that. */
function groupByWord(placed: readonly PlacedSeam[]): Group[] {
  const words = [...visibilityRamp.map((level) => level.word), null];
  return words
    .map((word) => ({ word, seams: placed.filter((one) => wordOf(one) === word) }))
    .filter((group) => group.seams.length > 0);
}

function wordOf({ seam }: PlacedSeam): VisibilityWord | null {
  return seam.visibility.word ?? levelOfVisibility(seam.visibility.v)?.word ?? null;
}

/** The seam to walk to: the most visible of those that anyone would see at all. */
function worstOf(placed: readonly PlacedSeam[]): PlacedSeam | null {
  const seen = placed.filter(({ seam }) => (seam.visibility.v ?? 0) >= 1);
  return seen.sort((a, b) => b.seam.visibility.v! - a.seam.visibility.v!)[0] ?? null;
}

function namedClauses(groups: Group[], worst: PlacedSeam | null, units: LengthUnits): string {
  const all = groups.flatMap((group) => group.seams);
  const onlyOneKind = new Set(all.map((one) => one.runs)).size === 1;
  let isFirst = true;
  return groups
    .map(({ word, seams }) => {
      const subject = subjectOf(seams, all.length, onlyOneKind, isFirst);
      isFirst = false;
      if (word === null) return untoldClause(subject, seams);
      const clause = `${subject} ${visibilityClause(word, seams.length > 1)}`;
      if (!worst || !seams.includes(worst)) return clause;
      const where = worstPlaceText(worst, units);
      if (!where) return clause;
      const comma = where.startsWith('from') && word !== 'if you look for it' ? ' ' : ', ';
      if (seams.length === 1) return `${clause}${comma}${where}`;
      return `${clause}, the ${worst.name} most: ${where}`;
    })
    .join('; ');
}

function subjectOf(
  seams: readonly PlacedSeam[],
  total: number,
  onlyOneKind: boolean,
  isFirst: boolean,
): string {
  if (total === 1) return 'it';
  if (seams.length === total) return total === 2 ? 'both' : `all ${countWord(total)}`;
  if (!onlyOneKind) return joinWords(seams.map((one) => `the ${one.name}`));
  const adjectives = seams.map((one) => one.name.replace(/ (joint|crosscut)/, ''));
  const ones = isFirst ? (seams.length === 1 ? ' one' : ' ones') : '';
  if (seams.some((one) => /\bfrom\b/.test(one.name))) return `the ${joinWords(adjectives)}`;
  return `the ${joinWords(adjectives)}${ones}`;
}

function untoldClause(subject: string, seams: readonly PlacedSeam[]): string {
  const reason = reasonFor(seams[0]!.seam.notes);
  const about = subject === 'it' ? 'how visible it is' : `about ${subject}`;
  return `this photo cannot tell ${about}${reason ? `, because ${reason}` : ''}`;
}

/** Many seams: how many of each, then the worst by name. */
function countedClauses(groups: Group[], worst: PlacedSeam | null, units: LengthUnits): string {
  const counts = groups.map(({ word, seams }) => {
    const many = countWord(seams.length);
    return word === null
      ? `${many} cannot be told`
      : `${many} ${visibilityClause(word, seams.length > 1)}`;
  });
  if (!worst) return joinWords(counts);
  const where = worstPlaceText(worst, units);
  const clause = visibilityClause(wordOf(worst)!, false);
  return `${joinWords(counts)}. The most visible, the ${worst.name}, ${clause}${where ? ` ${where}` : ''}`;
}
