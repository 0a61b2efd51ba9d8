import type { LayoutStep, PlaningBudget } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';
import type { ExactLayout } from './exactLayout.js';
import type { FaceSizeMm } from './layoutInput.js';
import type { SpareWood } from './spareWood.js';

/** From the dry clamp to the fitted front, in words. */
export function finishingSteps(
  layout: ExactLayout,
  spare: SpareWood,
  planing: PlaningBudget | null,
): LayoutStep[] {
  return [
    {
      kind: 'dryClamp',
      cut: null,
      title: 'Clamp dry',
      text: `Everything but the front, tick to tick. ${slideWords(layout)} Light pressure must close every joint; a gap that passes a slip of paper is jointed again, on the rail.`,
      brief: `All but the front, tick to tick. ${slideWords(layout)} Light pressure must close it; where a slip of paper goes in, joint again, on the rail.`,
      cautions: [],
    },
    {
      kind: 'glue',
      cut: null,
      title: 'Glue',
      text: 'Glue rails and end pieces with the front dry in its place, wrapped, or a spacer of its size. Check the opening with the tape, both diagonals too, before the glue sets.',
      brief:
        'The front, wrapped, or a spacer in its place. Check opening and diagonals before it sets.',
      cautions: ['Glue’s data sheet, gloves, fresh air; help with heavy clamps.'],
    },
    {
      kind: 'flatten',
      cut: null,
      title: 'Flatten',
      text: planing
        ? `Lose ${lengthWords(planing.toLoseMm)} in all, ${lengthWords(planing.eachFaceMm)} a face, the same on panel and front. A step at a joint and a bow together must stay below ${lengthWords(planing.absorbsMm)}.`
        : 'Plane panel and front by the same amount: a line moves sideways as the face goes down.',
      brief: planing
        ? `Lose ${lengthWords(planing.toLoseMm)} in all, half a face, panel and front alike. Step and bow together below that.`
        : 'Panel and front by the same amount.',
      cautions: ['Short for a planer: see its manual, or by hand.'],
    },
    ...(layout.face ? [squaring(layout.face, spare)] : []),
    {
      kind: 'fit',
      cut: null,
      title: layout.frontWood === 'same' ? 'Fit the front last' : 'Make the front last',
      text: fitWords(layout),
      brief: fitWords(layout),
      cautions: ['Hand plane, or clamped on the sled; not on the fence.'],
    },
  ];
}

function squaring(face: FaceSizeMm, spare: SpareWood): LayoutStep {
  const { upperMm, lowerMm, leftMm, rightMm } = spare;
  return {
    kind: 'square',
    cut: null,
    title: 'Square the face',
    text: `Trim the panel to ${lengthWords(face.lengthMm)} by ${lengthWords(face.widthMm)}: about ${lengthWords(upperMm)} off the upper edge, ${lengthWords(lowerMm)} off the lower, ${lengthWords(leftMm)} off the left end, ${lengthWords(rightMm)} off the right.`,
    brief: `To ${lengthWords(face.lengthMm)} by ${lengthWords(face.widthMm)}: ${lengthWords(upperMm)} off above, ${lengthWords(lowerMm)} below, ${lengthWords(leftMm)} left, ${lengthWords(rightMm)} right.`,
    cautions: ['Wide panel: sled or a helper, as the saw’s manual says.'],
  };
}

function slideWords({ slideLeft, slideRight }: ExactLayout): string {
  const left = slideLeft.valueOf();
  const right = slideRight.valueOf();
  if (left === 0 && right === 0) {
    return 'The end pieces stand where they stood, their outer ends flush with the rails.';
  }
  return `Slide the left end ${lengthWords(left)} and the right end ${lengthWords(right)} towards the front; their outer ends fall back by that.`;
}

function fitWords(layout: ExactLayout): string {
  const { trim, trimEnds, frontWood } = layout;
  const trimMm = trim.valueOf();
  const endsMm = trimEnds.valueOf();
  if (frontWood !== 'same') {
    return 'Measure the glued opening, take the gap of this species off, and cut the new front to that.';
  }
  return trimMm > 0
    ? `Take ${lengthWords(trimMm)} off each long edge and ${endsMm > 0 ? lengthWords(endsMm) : 'nothing'} off each end, so that its lines stay opposite their own.`
    : 'No trim is allowed for: take the movement gap off evenly above and below, or all at the top: the pattern loses that much there.';
}
