import { SeamgrainError } from '../../core/errors.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { computeLayout } from '../../core/shop/layout/computeLayout.js';
import type { Photo, Settings } from '../state/project.js';
import { frontPlaceOf } from './frontPlaceOf.js';
import { panelSize } from './panelSize.js';

/** The layout, or why there is none. */
export type LayoutAnswer =
  | { readonly layout: LayoutResult; readonly problem: null }
  | { readonly layout: null; readonly problem: { readonly text: string; readonly hint: string } };

/** The numbers for the saw for the front on this panel. */
export function layoutOf(photo: Photo, settings: Settings): LayoutAnswer | null {
  const size = panelSize(photo);
  const place = frontPlaceOf(photo, settings);
  if (!size || !place) return null;
  const { frontWidthMm, frontHeightMm, kerfMm, endPieces, unit, ruleMarks } = settings;
  const slide = endPieces === 'slide' ? kerfMm : 0;
  try {
    const layout = computeLayout({
      panel: { lengthMm: size.widthMm, widthMm: size.heightMm },
      fronts: [{ lengthMm: frontWidthMm, widthMm: frontHeightMm, ...place }],
      kerfMm,
      dressMm: settings.dressMm,
      trimMm: settings.trimMm,
      endSlideMm: { leftMm: slide, rightMm: slide },
      rule:
        unit === 'inch'
          ? { style: 'fraction', denominator: ruleMarks }
          : { style: 'metric', stepMm: 0.5 },
      frontWood: settings.frontWood,
      ...(settings.roughMm !== null && settings.finishedMm !== null
        ? { thickness: { roughMm: settings.roughMm, finishedMm: settings.finishedMm } }
        : {}),
    });
    return { layout, problem: null };
  } catch (thrown) {
    if (!(thrown instanceof SeamgrainError)) throw thrown;
    return { layout: null, problem: { text: thrown.message, hint: thrown.hint } };
  }
}
