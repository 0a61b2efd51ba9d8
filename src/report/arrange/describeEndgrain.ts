import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { formatMm } from '../../core/units/formatMm.js';

/** What the end of a board says, in a few sentences. */
export function describeEndgrain({
  pith,
  ringAngle,
  ringWidthMm,
  cut,
  panel,
  notes,
}: EndgrainResult): string[] {
  if (!pith || !cut) return ['Cannot tell how this board was sawn.', ...notes];
  const shares = Object.entries(cut)
    .filter(([, share]) => share > 0)
    .sort((a, b) => b[1] - a[1])
    .map(([name, share]) => `${Math.round(100 * share)} % ${name}`);
  const inside =
    pith.xMm >= 0 && pith.xMm <= panel.widthMm && pith.yMm >= 0 && pith.yMm <= panel.heightMm;
  const middle = ringAngle[ringAngle.length >> 1];
  return [
    `Of the width ${shares.join(', ')}.`,
    `The rings stand at ${middle.angleDeg.toFixed(0)} deg to the wide face in the middle of the width.`,
    `The pith lies ${inside ? 'in the board' : 'outside the board'}, ${formatMm(pith.xMm)} from the left and ${formatMm(pith.yMm)} from the top, give or take ${formatMm(pith.seMm)}.`,
    ...(ringWidthMm.median === null
      ? []
      : [`Rings are about ${formatMm(ringWidthMm.median)} wide.`]),
    ...notes,
  ];
}
