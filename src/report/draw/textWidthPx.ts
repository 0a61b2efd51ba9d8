import { fractionParts } from './fractionParts.js';
import { fractionScale } from './fractionScale.js';

/**
 * Advance widths of DejaVu Sans, thousandths of the type size, for the signs from space to ~.
 * Measured in Chromium from Debian's fonts-dejavu-core; the widest of the common screen fonts,
 * so a label that fits by this table fits everywhere.
 */
const regular = [
  318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
  636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
  575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
  611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
  278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];

/** Small type on whole pixels comes out this much wider at most. */
const hintingFactor = 1.04;

/** Bold letters of the same family are at most this much wider on average. */
const boldFactor = 1.16;

/**
 * How much room a text needs, px, on the safe side for any system font.
 * @param text one line
 * @param sizePx type size, px
 */
export function textWidthPx(text: string, sizePx: number, bold = false): number {
  const width = fractionParts(text)
    .map((part) =>
      part.fraction
        ? fractionScale * (plainWidth(part.fraction.above) + plainWidth(part.fraction.below)) +
          plainWidth('/')
        : plainWidth(part.text),
    )
    .reduce((sum, one) => sum + one, 0);
  return width * sizePx * hintingFactor * (bold ? boldFactor : 1);
}

/** In parts of the type size. */
function plainWidth(text: string): number {
  let sum = 0;
  // Signs outside the table (accents, other scripts) count as one em.
  for (const sign of text) sum += regular[sign.codePointAt(0)! - 32] ?? 1000;
  return sum / 1000;
}
