import type { CutShares } from '../../core/results/compareResult.js';

/** `70 % flatsawn, 30 % rift`. */
export function cutText(cut: CutShares): string {
  return (['flatsawn', 'rift', 'quartered'] as const)
    .filter((name) => cut[name] >= 0.005)
    .map((name) => `${Math.round(100 * cut[name])} % ${name}`)
    .join(', ');
}
