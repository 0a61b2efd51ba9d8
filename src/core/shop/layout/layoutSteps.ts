import type { LayoutCut, LayoutStep, PlaningBudget } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';
import { bowBrief } from './bowBrief.js';
import { bowWords } from './bowWords.js';
import type { ExactLayout } from './exactLayout.js';
import { finishingSteps } from './finishingSteps.js';
import type { SpareWood } from './spareWood.js';
import type { References } from './workSequence.js';

/** All the work from the flat blank to the fitted front, in words, cautions beside each step. */
export function layoutSteps(
  layout: ExactLayout,
  references: References,
  cuts: readonly LayoutCut[],
  spare: SpareWood,
  planing: PlaningBudget | null,
): LayoutStep[] {
  const sawn = cuts.map(cutStep);
  return [
    ...preparation(references),
    ...sawn.filter(({ kind }) => kind === 'rip'),
    dressing(layout, spare),
    ...sawn.filter(({ kind }) => kind === 'crosscut'),
    ...finishingSteps(layout, spare, planing),
  ];
}

function preparation({ edge, end }: References): LayoutStep[] {
  return [
    {
      kind: 'prepare',
      cut: null,
      title: 'Prepare the panel',
      text: `Flatten it. Joint the ${edge} straight and square and mark it: every rip has this edge on the fence. Square the ${end} to it: every crosscut has it at the stop. Make a test cut and measure the kerf.`,
      brief: `Flatten. Joint the ${edge}, square the ${end} to it, mark both. Test cut: measure the kerf.`,
      cautions: ['Dust extraction, mask, eye and hearing protection at every machine.'],
    },
    {
      kind: 'mark',
      cut: null,
      title: 'Mark before cutting',
      text: 'Draw a triangle over the whole face, point up, and the ticks over every cut line. Draw each cut as a band one kerf wide. No piece is turned over or end for end after that.',
      brief:
        'Triangle over the whole face, point up; ticks over every cut line; each cut a band one kerf wide. Nothing is turned over or end for end.',
      cautions: [],
    },
  ];
}

function cutStep(cut: LayoutCut): LayoutStep {
  const [inner, beyond] = cut.makesAsSet;
  const isRip = cut.kind === 'rip';
  const size = (piece: typeof inner) =>
    `${piece.name} ${lengthWords(isRip ? piece.widthMm : piece.lengthMm)}`;
  return {
    kind: cut.kind,
    cut: cut.n,
    title: isRip
      ? `Rip the ${beyond.name} from the ${inner.name}`
      : `Crosscut the ${beyond.name} from the ${inner.name}`,
    text: `${cut.note} ${isRip ? 'Wide' : 'Long'} afterwards: ${size(inner)}, ${size(beyond)}.`,
    brief: `${cut.setting.text} to the ${cut.toBlade} side of the blade.`,
    cautions: cut.cautions,
  };
}

function dressing(layout: ExactLayout, spare: SpareWood): LayoutStep {
  const { dress, courses } = layout;
  const widths = courses.map(({ name, y, dressedEdges }) => {
    const width = y.to.sub(y.from).sub(dress.mul(dressedEdges.length));
    return `${name} ${lengthWords(width.valueOf())}`;
  });
  const amount = dress.valueOf();
  const work =
    amount > 0
      ? `Take ${lengthWords(amount)} off every sawn long edge, no more, and never the reference edge. Wide afterwards: ${widths.join(', ')} and what rounding adds.`
      : 'No dressing is allowed for: the sawn edges must close as they are. Any stroke of the plane is lost width.';
  return {
    kind: 'dress',
    cut: null,
    title: amount > 0 ? 'Dress the sawn edges' : 'Check the sawn edges',
    text: `${work} ${bowWords(layout, spare)}`,
    brief: `${amount > 0 ? `${lengthWords(amount)} off every sawn long edge, no more, never off the reference edge. Then wide: ${widths.join(', ')}, and what rounding added.` : 'Nothing may come off: the sawn edges must close as they are.'} ${bowBrief(layout, spare)}`,
    cautions:
      amount > 0
        ? ['Jointer: guard on, push blocks, with the grain; a turned piece planes the other way.']
        : [],
  };
}
