import type { ForecastResult, ForecastRip } from '../../core/results/forecastResult.js';
import { escapeXml } from '../draw/escapeXml.js';
import { fractionsHtml } from '../html/fractionsHtml.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { vanishingText } from '../words/vanishingText.js';
import { cutCueNoun } from './cutCueNoun.js';
import { slideText } from './slideText.js';

/** Every number of the asked rips, a column each. */
export function ripTable({ rips }: ForecastResult, units: LengthUnits): string {
  const heads = rips.map(
    ({ yMm }) => `<th scope="col">${fractionsHtml(placeText(yMm, units))}</th>`,
  );
  const rows = rowsOf(units).map(([label, read]) => {
    const cells = rips.map((rip) => {
      const value = read(rip);
      return value === null
        ? '<td class="untold">cannot tell</td>'
        : `<td>${fractionsHtml(value)}</td>`;
    });
    return `<tr><th scope="row">${escapeXml(label)}</th>${cells.join('')}</tr>`;
  });
  return `<div class="scroll"><table><thead><tr><td></td>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}

type Row = readonly [label: string, read: (rip: ForecastRip) => string | null];

function rowsOf(units: LengthUnits): Row[] {
  const fixed = (v: number | null) => (v === null ? null : v.toFixed(2));
  return [
    ['Visibility V (1 = just visible)', ({ visibility: { v } }) => fixed(v)],
    ['V by the angle of the grain alone', ({ vByAngle }) => fixed(vByAngle)],
    ['What the eye catches', ({ visibility: { cue } }) => (cue ? cutCueNoun(cue) : 'nothing')],
    ['Seen from as far as', ({ visibility }) => farText(visibility, units)],
    ['Best slide of the upper piece', ({ bestSlideMm }) => slideOf(bestSlideMm, units)],
    ['V after that slide', ({ vAtBestSlide }) => fixed(vAtBestSlide)],
    [
      'Slides that the angles alone propose',
      ({ slidesByAngleMm }) =>
        slidesByAngleMm.map((mm) => slideOf(mm, units)).join('; ') ||
        'none within the spare length',
    ],
  ];
}

function farText({ v, vanishesAtMm }: ForecastRip['visibility'], units: LengthUnits) {
  if (v === null) return null;
  return vanishesAtMm === null ? 'at no distance' : vanishingText(vanishesAtMm, units);
}

function slideOf(mm: number | null, units: LengthUnits): string | null {
  if (mm === null) return null;
  return mm === 0 ? 'none' : slideText(mm, units);
}
