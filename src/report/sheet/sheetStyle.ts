/** Type and room of a page, px at 96 to the inch. */
export interface SheetStyle {
  /** Text width. */
  readonly widthPx: number;
  /** Words of a step. */
  readonly bodyPx: number;
  /** Second-rank words. */
  readonly smallPx: number;
  /** The number for the fence. */
  readonly settingPx: number;
}

/** Style at a scale; 1 gives settings of 23 pt and words of 9.4 pt. */
export function sheetStyle(widthPx: number, scale: number): SheetStyle {
  return {
    widthPx,
    bodyPx: 12.5 * scale,
    smallPx: 11.5 * scale,
    settingPx: 31 * Math.min(scale, 1.1),
  };
}
