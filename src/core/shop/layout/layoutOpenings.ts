import type { LayoutOpening } from '../../results/layoutResult.js';
import type { ExactLayout } from './exactLayout.js';
import type { FrontPlace } from './layoutInput.js';

/**
 * The openings after glue-up and the gaps round their fronts.
 * Height = dressed strip. Length = distance of the neighbours' ends, less what the end pieces
 * slide in; beside a front of the panel's own wood that includes the kerfs.
 */
export function layoutOpenings(
  layout: ExactLayout,
  fronts: readonly FrontPlace[],
): LayoutOpening[] {
  const { dress, slideLeft, slideRight, trim, trimEnds } = layout;
  const sorted = [...fronts].sort((a, b) => a.yMm - b.yMm || a.xMm - b.xMm);
  let next = 0;
  return layout.strips.flatMap((strip) => {
    const width = strip.y.to.sub(strip.y.from).sub(dress.mul(2));
    const { pieces } = strip;
    return pieces.flatMap((piece, index): LayoutOpening[] => {
      if (piece.kind !== 'front' && piece.kind !== 'cut-out') return [];
      const front = sorted[next++]!;
      const before = pieces[index - 1]!;
      const after = pieces[index + 1]!;
      const halfKerf = layout.kerf.div(2);
      // Two fronts parted by one cut share its kerf.
      const isFront = (kind: string) => kind === 'front' || kind === 'cut-out';
      const start = isFront(before.kind) ? piece.x.from.sub(halfKerf) : before.x.to;
      const end = isFront(after.kind) ? piece.x.to.add(halfKerf) : after.x.from;
      const from = index === 1 ? start.add(slideLeft) : start;
      const to = index === pieces.length - 2 ? end.sub(slideRight) : end;
      const frontFrom =
        layout.frontWood === 'same' ? piece.x.from.add(trimEnds) : before.x.to.add(trimEnds);
      const frontTo =
        layout.frontWood === 'same' ? piece.x.to.sub(trimEnds) : after.x.from.sub(trimEnds);
      return [
        {
          front: piece.name.replace('cut-out', 'front'),
          lengthMm: to.sub(from).valueOf(),
          widthMm: width.valueOf(),
          frontLengthMm: front.lengthMm,
          frontWidthMm: front.widthMm,
          gapMm: {
            upper: trim.valueOf(),
            lower: trim.valueOf(),
            left: frontFrom.sub(from).valueOf(),
            right: to.sub(frontTo).valueOf(),
          },
        },
      ];
    });
  });
}
