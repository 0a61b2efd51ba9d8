import type { DryClampResult } from '../../results/dryClampResult.js';
import { formatInches } from '../../units/formatInches.js';
import { lengthWords } from '../../units/lengthWords.js';

const how = {
  tight: '',
  hollow:
    'The joint is hollow: it touches at its ends. The ends of the edge come down; a spring joint is no excuse for more than paper.',
  convex: 'The joint rocks on its middle: take the middle of the edge down, a shaving at a time.',
  'open left': 'It is open at the left end: take a wedge off, most at the right end.',
  'open right': 'It is open at the right end: take a wedge off, most at the left end.',
  uneven: 'It is open here and there: joint the whole edge again.',
} as const;

/** The verdict as a maker would say it. */
export function dryJointWords({
  verdict,
  shape,
  worst,
  dress,
  paperMm,
}: Pick<DryClampResult, 'verdict' | 'shape' | 'worst' | 'dress' | 'paperMm'>): string[] {
  if (verdict === 'cannot tell') {
    return ['The photo cannot tell whether this joint closes: try it with a slip of paper.'];
  }
  if (verdict === 'closes' || !worst || !dress || !shape) {
    return [
      `Nothing wider than a slip of paper (${lengthWords(paperMm)}): light pressure closes it. If it takes force, joint again.`,
    ];
  }
  const words = [
    `Widest at ${formatInches(worst.atMm)} from the left: ${lengthWords(worst.gapMm)}. ${how[shape]}`,
    `Dress the ${dress.piece}, up to ${lengthWords(dress.takeMm)}. Check both edges with a straightedge first: the gap alone does not say which one is off. A convex edge is the safer one to correct.`,
  ];
  if (dress.isEnough === false) {
    words.push(
      `The ${dress.piece} is ${lengthWords(-dress.spareLeftMm!)} short of the width for that: the face comes out narrower, or the piece is made again.`,
    );
  } else if (dress.spareLeftMm !== null) {
    words.push(`${lengthWords(dress.spareLeftMm)} to spare afterwards.`);
  }
  return words;
}
