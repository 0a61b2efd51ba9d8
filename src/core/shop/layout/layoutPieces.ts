import type { LayoutPiece } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';
import type { ExactLayout, ExactPiece } from './exactLayout.js';
import { isStrip } from './isStrip.js';
import type { WorkOnRule } from './settingsOnRule.js';

/** The finished pieces in reading order, exact and as set, with what may be dressed and what not. */
export function layoutPieces(layout: ExactLayout, onRule: WorkOnRule): LayoutPiece[] {
  return layout.courses.flatMap((course) =>
    isStrip(course)
      ? course.pieces.map((piece) => describe(piece, course.name, layout, onRule))
      : [describe(course, null, layout, onRule)],
  );
}

function describe(
  { name, kind, x, y, dressedEdges }: ExactPiece,
  strip: string | null,
  { dress }: ExactLayout,
  onRule: WorkOnRule,
): LayoutPiece {
  const width = y.to.sub(y.from);
  const dressedWidthMm = width.sub(dress.mul(dressedEdges.length)).valueOf();
  const lengthMm = x.to.sub(x.from).valueOf();
  const set = onRule.run?.pieces.get(name);
  return {
    name,
    kind: kind === 'strip' ? 'front' : kind,
    strip,
    lengthMm,
    widthMm: width.valueOf(),
    dressedWidthMm,
    asSet: set
      ? {
          lengthMm: set.x.to.sub(set.x.from).valueOf(),
          widthMm: set.y.to.sub(set.y.from).valueOf(),
        }
      : { lengthMm, widthMm: dressedWidthMm },
    onPanel: { xMm: x.from.valueOf(), yMm: y.from.valueOf() },
    ...dressWords(kind, dressedEdges.join(' and '), dress.valueOf()),
  };
}

function dressWords(kind: ExactPiece['kind'], edges: string, dressMm: number) {
  const many = edges.includes(' and ');
  const amount = dressMm > 0 ? `${lengthWords(dressMm)}${many ? ' each' : ''}` : 'nothing';
  if (kind === 'rail') {
    return {
      mayDress: `the sawn ${edges} edge${many ? 's' : ''}: ${amount}`,
      mayNotDress: 'the outer edge before the panel is glued: settings are measured from it',
    };
  }
  const before = `both long edges as part of the strip, before the crosscuts: ${amount}`;
  if (kind === 'front') {
    return {
      mayDress: before,
      mayNotDress:
        'neither key dimension (length, width) after the crosscuts, until the glued opening is there to fit it to',
    };
  }
  if (kind === 'cut-out') {
    return { mayDress: 'as you like: it does not go back', mayNotDress: 'nothing' };
  }
  return {
    mayDress: before,
    mayNotDress: 'the crosscut end, and the width after the crosscuts: it makes the opening',
  };
}
