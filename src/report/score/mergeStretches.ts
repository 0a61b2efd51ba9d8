import type { SeamStretch } from './seamStretches.js';

/** Neighbours of one level made into one stretch. */
export function mergeStretches(stretches: readonly SeamStretch[]): SeamStretch[] {
  const merged: SeamStretch[] = [];
  for (const stretch of stretches) {
    const last = merged.at(-1);
    if (last && last.level === stretch.level) {
      merged[merged.length - 1] = { ...last, toMm: stretch.toMm };
    } else {
      merged.push(stretch);
    }
  }
  return merged;
}
