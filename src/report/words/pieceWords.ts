import { ordinalWord } from './ordinalWord.js';

/** From where to where a piece of a line runs along the panel, mm. */
export interface PieceSpan {
  readonly fromMm: number;
  readonly toMm: number;
}

/** Nearer to the panel's end than this a piece reaches it: a share of the panel, and mm. */
const reach = { share: 0.02, leastMm: 5 };

/**
 * Tells the pieces of one line apart by where they lie on the panel, never by how many were found:
 * a piece that reaches the panel's end is that end's, one over the panel's middle, or between the
 * two end pieces, is the middle one, and any other lies to the side of its own middle. Of two on
 * one side the outer is the far one. Only what cannot be told so is counted.
 * @param row pieces that do not overlap, in order
 * @param roomMm the panel's size along the line
 * @param ends what its two ends are called
 * @returns a word for each piece; empty for one that runs from end to end
 */
export function pieceWords(
  row: readonly PieceSpan[],
  roomMm: number,
  ends: readonly [string, string],
): string[] {
  const tolerance = Math.max(reach.leastMm, reach.share * roomMm);
  const starts = ({ fromMm }: PieceSpan) => fromMm <= tolerance;
  const stops = ({ toMm }: PieceSpan) => toMm >= roomMm - tolerance;
  const isWhole = row.length === 3 && starts(row[0]!) && stops(row[2]!);
  const words = row.map((piece, index) => {
    if (starts(piece) && stops(piece)) return '';
    if (starts(piece)) return ends[0];
    if (stops(piece)) return ends[1];
    if ((isWhole && index === 1) || isOver(piece, roomMm / 2)) return 'middle';
    return piece.fromMm + piece.toMm < roomMm ? ends[0] : ends[1];
  });
  const many = (word: string) => words.filter((each) => each === word).length;
  if (many('middle') > 1 || ends.some((end) => many(end) > 2))
    return words.map((_, index) => ordinalWord(index + 1));
  return words.map((word, index) => {
    const outer = word === ends[0] ? words.indexOf(word) : words.lastIndexOf(word);
    return word !== 'middle' && many(word) === 2 && index === outer ? `far ${word}` : word;
  });
}

/** A place lies well within a piece: not in the quarter at either end. */
function isOver({ fromMm, toMm }: PieceSpan, atMm: number): boolean {
  const margin = (toMm - fromMm) / 4;
  return fromMm + margin <= atMm && atMm <= toMm - margin;
}
