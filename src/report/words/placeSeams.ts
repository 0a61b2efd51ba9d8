import type { ScoreResult, SeamResult } from '../../core/results/scoreResult.js';
import { endsOfLine } from './endsOfLine.js';
import { grainRunsUp } from './grainRunsUp.js';
import { ordinalWord } from './ordinalWord.js';
import { pieceWords } from './pieceWords.js';
import type { PlacedSeam } from './placedSeam.js';

interface Spanned {
  readonly seam: SeamResult;
  /** Mean distance from the top (joints) or from the left (crosscuts), mm. */
  readonly acrossMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** A lone piece shorter than this share of the panel is called by the end that it reaches. */
const lone = 2 / 3;

/**
 * Names the seams by where they lie: those along the panel from the top down (upper, lower), those
 * across it from the left. Pieces of one line, as beside an opening, are told apart by where they
 * lie on it, so that the words hold whatever was not found.
 * @returns those along from the top down, then those across from the left
 */
export function placeSeams({ seams, panel }: Pick<ScoreResult, 'seams' | 'panel'>): PlacedSeam[] {
  const along = rowsOf(seams.filter(runsAlong).map((seam) => spanOf(seam, 'along')));
  const across = rowsOf(seams.filter((seam) => !runsAlong(seam)).map((s) => spanOf(s, 'across')));
  const isUp = grainRunsUp(seams);
  return [
    ...nameRows(along, 'along', panel.widthMm, !isUp),
    ...nameRows(across, 'across', panel.heightMm, isUp),
  ].map((placed, index) => ({ ...placed, number: index + 1 }));
}

function runsAlong({ line }: SeamResult): boolean {
  return Math.abs(line.x2Mm - line.x1Mm) >= Math.abs(line.y2Mm - line.y1Mm);
}

function spanOf(seam: SeamResult, runs: PlacedSeam['runs']): Spanned {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const [from, to, acrossMm] =
    runs === 'along' ? [x1Mm, x2Mm, (y1Mm + y2Mm) / 2] : [y1Mm, y2Mm, (x1Mm + x2Mm) / 2];
  return { seam, acrossMm, fromMm: Math.min(from, to), toMm: Math.max(from, to) };
}

/** Seams less than 8 mm apart across that do not lie beside each other share a row. */
function rowsOf(spans: Spanned[]): Spanned[][] {
  const rows: Spanned[][] = [];
  for (const span of spans.sort((a, b) => a.acrossMm - b.acrossMm)) {
    const row = rows.at(-1);
    const fits = row?.every(
      (other) =>
        Math.abs(other.acrossMm - span.acrossMm) < 8 &&
        (other.toMm <= span.fromMm + 2 || span.toMm <= other.fromMm + 2),
    );
    if (row && fits) row.push(span);
    else rows.push([span]);
  }
  return rows.map((row) => row.sort((a, b) => a.fromMm - b.fromMm));
}

function nameRows(
  rows: Spanned[][],
  runs: PlacedSeam['runs'],
  roomMm: number,
  isJoint: boolean,
): Omit<PlacedSeam, 'number'>[] {
  const noun = isJoint ? 'joint' : 'crosscut';
  const rowEnds = endsOfLine(runs === 'along' ? 'across' : 'along');
  const pieceEnds = endsOfLine(runs);
  const start = runs === 'along' ? 'from the top' : 'from the left';
  // A crosscut ends at the joints beside it: alone in its line it needs no further word.
  const areTold = (row: Spanned[]) =>
    rows.some((each) => each.length > 1) || (isJoint && isOneEnds(row[0]!, roomMm));
  return rows.flatMap((row, rowIndex) => {
    const rowWord = placeWord(rowIndex, rows.length, rowEnds);
    const pieces = areTold(row) ? pieceWords(row, roomMm, pieceEnds) : [];
    return row.map(({ seam }, pieceIndex) => {
      const pieceWord = pieces[pieceIndex] ?? '';
      // "upper left", never "left upper", whichever of the two names the row.
      const words = runs === 'along' ? [rowWord, pieceWord] : [pieceWord, rowWord];
      const adjective = words.filter(Boolean).join(' ');
      const counted = rows.length > 3 ? ` ${start}` : '';
      return {
        seam,
        runs,
        noun,
        row: rowIndex,
        adjective,
        name: `${adjective} ${noun}${counted}`.trim(),
      } as const;
    });
  });
}

/** Runs from one end of the panel, and stops well before the other. */
function isOneEnds(piece: Spanned, roomMm: number): boolean {
  const word = pieceWords([piece], roomMm, ['start', 'end'])[0]!;
  return /start|end/.test(word) && piece.toMm - piece.fromMm < lone * roomMm;
}

function placeWord(index: number, count: number, ends: readonly [string, string]): string {
  if (count === 1) return '';
  if (count > 3) return ordinalWord(index + 1);
  if (index === 0) return ends[0];
  return index === count - 1 ? ends[1] : 'middle';
}
