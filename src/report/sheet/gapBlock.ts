import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { trimForGap } from '../../core/shop/movement/trimForGap.js';
import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';
import type { Block } from './block.js';
import type { SheetStyle } from './sheetStyle.js';
import { stackBlocks } from './stackBlocks.js';
import { textLines } from './textLines.js';

/** The movement gap: the number to leave in big figures, where, and how it goes over the year. */
export function gapBlock(
  gap: GapResult,
  layout: LayoutResult,
  x: number,
  widthPx: number,
  { bodyPx, smallPx, settingPx }: SheetStyle,
): Block {
  const { seasons, place } = gap;
  const { rule } = layout;
  const at = (mm: number) => (rule.style === 'metric' ? formatMm(mm, 1) : formatInches(mm, 64));
  const line = { x, widthPx };
  const inMm = rule.style === 'metric' ? '' : `${formatMm(seasons.fittedMm, 1)}; `;
  const where = {
    top: `all above the front`,
    bottom: `all below the front`,
    split: `half above, half below (${at(place.topMm)} each)`,
  }[place.at];
  const verb = gap.changeMm < 0 ? 'shrinks' : 'swells';
  return stackBlocks(
    [
      textLines('Gap to leave at fitting', { ...line, sizePx: bodyPx, bold: true }),
      textLines(at(seasons.fittedMm), { ...line, sizePx: settingPx, bold: true }),
      textLines(
        `${where}; ${inMm}to be sure ${at(seasons.fittedMm + gap.gapAmpleMm - gap.gapMm)}`,
        { ...line, sizePx: bodyPx },
      ),
      textLines(
        `${gap.species}, ${gap.mcFrom.toFixed(1)} to ${gap.mcTo.toFixed(1)} % moisture: the front ${verb} by ${at(Math.abs(gap.changeMm))}, give or take ${at(gap.changeSeMm)}. Gap when driest ${at(seasons.driestMm)}, when dampest ${at(seasons.dampestMm)}.`,
        { ...line, sizePx: smallPx },
      ),
      textLines(
        `A dark line of ${at(gap.looks.dampestLineMm)} to ${at(gap.looks.driestLineMm)}. ${gap.looks.advice}`,
        {
          ...line,
          sizePx: smallPx,
        },
      ),
      ...trimForGap(layout, gap).map((text) =>
        textLines(text, { ...line, sizePx: smallPx, isCaution: true }),
      ),
    ],
    2,
  );
}
