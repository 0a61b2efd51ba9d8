import type { LayoutResult } from '../../core/results/layoutResult.js';
import { lengthWords } from '../../core/units/lengthWords.js';

/** A layout as lines for a terminal: need and spare, then every step with its cautions. */
export function describeLayout(layout: LayoutResult): string[] {
  const { needs, spare, safety, steps, notes } = layout;
  const lines = [
    `Needs ${lengthWords(needs.lengthMm)} along the grain, ${lengthWords(needs.widthMm)} across.`,
    `To spare: ${lengthWords(spare.lengthMm)} along, ${lengthWords(spare.widthMm)} across (above ${lengthWords(spare.upperMm)}, below ${lengthWords(spare.lowerMm)}, left ${lengthWords(spare.leftMm)}, right ${lengthWords(spare.rightMm)}).`,
  ];
  if (!safety.canBeCut) {
    lines.push('', 'NOT SAFE ON THE SAW AS IT STANDS:', ...safety.problems.map((p) => `  ! ${p}`));
  }
  for (const step of steps) {
    lines.push('', `${step.cut === null ? '-' : `Cut ${step.cut}:`} ${step.title}`);
    lines.push(`  ${step.text}`, ...step.cautions.map((caution) => `  ! ${caution}`));
  }
  return [
    ...lines,
    '',
    ...layout.cautions.filter((text) => !safety.problems.includes(text)).map((text) => `! ${text}`),
    '',
    ...notes,
  ];
}
