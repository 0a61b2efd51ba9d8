import type { Settings } from '../state/project.js';

/** Of the panel's length and width, when a front has to be thought up. */
const share = { along: 0.5, across: 0.4 };

/**
 * The size of the front to begin with: as set where the panel has room for it and its kerfs, else
 * half the panel's length and two fifths of its width, in half inches (or 5 mm).
 * @param panel length and width of the panel, mm
 */
export function fittingFront(
  panel: { readonly widthMm: number; readonly heightMm: number },
  { frontWidthMm, frontHeightMm, kerfMm, dressMm, unit }: Settings,
): { readonly frontWidthMm: number; readonly frontHeightMm: number } {
  const room = 2 * (kerfMm + dressMm);
  if (frontWidthMm + room <= panel.widthMm && frontHeightMm + room <= panel.heightMm)
    return { frontWidthMm, frontHeightMm };
  const step = unit === 'inch' ? 12.7 : 5;
  const rounded = (mm: number) => (mm < step ? mm : Math.floor(mm / step) * step);
  return {
    frontWidthMm: rounded(panel.widthMm * share.along),
    frontHeightMm: rounded(panel.heightMm * share.across),
  };
}
