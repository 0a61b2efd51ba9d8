import type Fraction from 'fraction.js';
import type { KerfBand } from './divideAxis.js';
import type { ExactLayout, ExactPiece } from './exactLayout.js';
import type { DressStep, Reference, SawStep, WorkStep } from './workSteps.js';

/** Which edge runs on the fence and which end meets the stop. */
export interface References {
  readonly edge: 'upper edge' | 'lower edge';
  readonly end: 'left end' | 'right end';
}

/**
 * The order of work: all rips from one edge, the farthest first, so that the reference edge stays
 * on the larger piece; then the dressing; then the crosscuts of each strip from one end, the
 * farthest first.
 * A line whose far side is kept is set to the far side of the blade, and the other way round, so
 * that the strip between two rips keeps its full size whatever the kerf.
 */
export function workSequence(layout: ExactLayout, references: References): WorkStep[] {
  const rips = sawSteps(layout.courses, layout.rips, 'panel', references.edge, 'rip');
  const dressings = layout.dress.equals(0)
    ? []
    : layout.courses.map((piece) => dressStep(piece, layout.dress));
  const crosscuts = layout.strips.flatMap((strip) =>
    sawSteps(
      strip.pieces.map((piece) => dressed(piece, layout.dress)),
      strip.crosscuts,
      strip.name,
      references.end,
      'crosscut',
    ),
  );
  return [...rips, ...dressings, ...crosscuts];
}

function sawSteps(
  pieces: readonly ExactPiece[],
  cuts: readonly KerfBand[],
  whole: string,
  reference: Reference,
  kind: 'rip' | 'crosscut',
): SawStep[] {
  const fromStart = reference === 'upper edge' || reference === 'left end';
  const ordered = fromStart ? pieces : [...pieces].reverse();
  const bands = fromStart ? cuts : [...cuts].reverse();
  const axis = kind === 'rip' ? 'y' : 'x';
  const total = pieces[pieces.length - 1]![axis].to;
  const fenceOf = (at: Fraction) => (fromStart ? at : total.sub(at));
  return bands
    .map((band, index): SawStep => {
      const inner = ordered.slice(0, index + 1);
      const beyond = ordered[index + 1]!;
      const keepsInner = (band.keeps === 'before') === fromStart;
      const protectedSide = band.keeps === 'before' ? band.from : band.to;
      const innerName = remainderName(inner);
      return {
        kind,
        workpiece: index === bands.length - 1 ? whole : remainderName(ordered.slice(0, index + 2)),
        reference,
        fence: fenceOf(protectedSide),
        toBlade: keepsInner ? 'near' : 'far',
        makes: [promise(innerName, mergeSpan(inner)), promise(beyond.name, beyond)],
        keeps: keepsInner ? inner[inner.length - 1]!.name : beyond.name,
      };
    })
    .reverse();
}

/** `upper rail`, `upper rail + strip`, `upper rail to middle rail`. */
function remainderName(pieces: readonly ExactPiece[]): string {
  const first = pieces[0]!.name;
  const last = pieces[pieces.length - 1]!.name;
  if (pieces.length === 1) return first;
  return pieces.length === 2 ? `${first} + ${last}` : `${first} to ${last}`;
}

function mergeSpan(pieces: readonly ExactPiece[]): Pick<ExactPiece, 'x' | 'y'> {
  const merge = (axis: 'x' | 'y') => {
    const ends = pieces.flatMap((piece) => [piece[axis].from, piece[axis].to]);
    const sorted = ends.sort((a, b) => a.compare(b));
    return { from: sorted[0]!, to: sorted[sorted.length - 1]! };
  };
  return { x: merge('x'), y: merge('y') };
}

function promise(name: string, { x, y }: Pick<ExactPiece, 'x' | 'y'>) {
  return { name, length: x.to.sub(x.from), width: y.to.sub(y.from) };
}

function dressStep(piece: ExactPiece, amount: Fraction): DressStep {
  return {
    kind: 'dress',
    workpiece: piece.name,
    edges: piece.dressedEdges,
    amount,
    makes: [promise(piece.name, dressed(piece, amount))],
  };
}

function dressed(piece: ExactPiece, amount: Fraction): ExactPiece {
  const from = piece.dressedEdges.includes('upper') ? piece.y.from.add(amount) : piece.y.from;
  const to = piece.dressedEdges.includes('lower') ? piece.y.to.sub(amount) : piece.y.to;
  return { ...piece, y: { from, to } };
}
