/** Sizes of type and marks, px, which do not shrink with the picture. */
export interface ScoreSizes {
  readonly marginPx: number;
  readonly textPx: number;
  readonly smallPx: number;
  /** Thickness of the loudest band beside a seam. */
  readonly bandPx: number;
  /** Clear wood between a seam and its band. */
  readonly gapPx: number;
  /** Height of one of the five steps in a strip under the panel. */
  readonly laneStepPx: number;
  /** The same in a rail beside it. */
  readonly railStepPx: number;
  /** Between the panel and a rail. */
  readonly railGapPx: number;
  /** The sentence on top. */
  readonly titlePx: number;
}

/** Sizes for a phone, a tablet or a desk, by the picture's width. */
export function scoreSizes(widthPx: number): ScoreSizes {
  if (widthPx < 560) return phone;
  return widthPx < 900 ? tablet : desk;
}

const phone: ScoreSizes = {
  marginPx: 12,
  textPx: 13,
  smallPx: 11.5,
  bandPx: 7,
  gapPx: 4,
  laneStepPx: 7,
  railStepPx: 4.5,
  railGapPx: 10,
  titlePx: 16.5,
};
const tablet: ScoreSizes = {
  marginPx: 14,
  textPx: 13.5,
  smallPx: 12,
  bandPx: 8,
  gapPx: 5,
  laneStepPx: 8,
  railStepPx: 6,
  railGapPx: 12,
  titlePx: 18,
};
const desk: ScoreSizes = {
  marginPx: 16,
  textPx: 14.5,
  smallPx: 13,
  bandPx: 9,
  gapPx: 6,
  laneStepPx: 10,
  railStepPx: 8,
  railGapPx: 14,
  titlePx: 21,
};
