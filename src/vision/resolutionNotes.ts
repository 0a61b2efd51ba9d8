/** Below this, fine grain falls between the pixels (method section 1). */
const fineGrainPxPerMm = 3;

/** Says so when the photo is too coarse for fine grain. */
export function resolutionNotes(pxPerMm: number): string[] {
  if (pxPerMm >= fineGrainPxPerMm) return [];
  return [
    `The photo has ${pxPerMm.toFixed(1)} px/mm on the panel; below ${fineGrainPxPerMm} px/mm fine grain cannot be judged.`,
  ];
}
