import type { SeamResult } from './scoreResult.js';

/** Width lost, slide and wedge where the photo tells none of them. */
export const untoldLoss: SeamResult['lost'] = {
  mm: null,
  seMm: null,
  slideMm: null,
  slideSeMm: null,
  wedgeMm: null,
  wedgeSeMm: null,
};

/** What is not measured at a joint that is only foreseen. */
export const untoldSeam = {
  p: null,
  found: 'placed',
  grain: { angleADeg: null, angleBDeg: null, changeDeg: null, changeSeDeg: null },
  offset: { mm: null, seMm: null, spacingMm: null },
  lost: untoldLoss,
  colourStep: { deltaE00: null },
  glueLine: { widthMm: null, contrast: null },
} as const;
