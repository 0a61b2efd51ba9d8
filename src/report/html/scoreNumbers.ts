import type { SeamResult } from '../../core/results/scoreResult.js';
import { mmPerInch } from '../../core/units/mmPerInch.js';
import { escapeXml } from '../draw/escapeXml.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { capitalise } from '../words/capitalise.js';
import { cueNoun } from '../words/cueNoun.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { vanishingText } from '../words/vanishingText.js';
import { fractionsHtml } from './fractionsHtml.js';
import { levelSwatchHtml } from './levelSwatchHtml.js';

/**
 * Every number of a score: a column per seam, four to a table so that it fits on paper. What the
 * photo did not tell says so.
 */
export function scoreNumbers(placed: readonly PlacedSeam[], units: LengthUnits): string {
  const tables: string[] = [];
  for (let first = 0; first < placed.length; first += 4) {
    tables.push(tableOf(placed.slice(first, first + 4), units));
  }
  return tables.join('');
}

function tableOf(placed: readonly PlacedSeam[], units: LengthUnits): string {
  const heads = placed.map(({ number, name, seam }) => {
    const swatch = levelSwatchHtml(levelOfVisibility(seam.visibility.v), `swatch-${number}-hatch`);
    return `<th scope="col">${swatch}${number}. ${escapeXml(capitalise(name))}</th>`;
  });
  const told = placed.some(({ seam }) => (seam.lost.wedgeMm ?? null) !== null);
  const rows = [...rowsOfNumbers(units), ...(told ? [wedgeRow(units)] : [])].map(
    ([label, read]) => {
      const cells = placed.map(({ seam }) => {
        const value = read(seam);
        return value === null
          ? '<td class="untold">cannot tell</td>'
          : `<td>${fractionsHtml(value)}</td>`;
      });
      return `<tr><th scope="row">${escapeXml(label)}</th>${cells.join('')}</tr>`;
    },
  );
  return `<div class="scroll"><table><thead><tr><td></td>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}

type Row = readonly [label: string, read: (seam: SeamResult) => string | null];

function rowsOfNumbers(units: LengthUnits): Row[] {
  const small = (mm: number | null, seMm: number | null = null) => decimalLength(mm, seMm, units);
  return [
    ['Visibility V (1 = just visible)', ({ visibility: { v } }) => fixed(v, 2)],
    ['Chance of being noticed', ({ visibility: { pSeen } }) => percent(pSeen)],
    ['Seen from as far as', (seam) => distanceOf(seam, units)],
    ['What the eye catches', ({ visibility: { cue } }) => (cue ? cueNoun(cue) : null)],
    ['Width lost', ({ lost: { mm, seMm } }) => small(mm, seMm)],
    ['Slide of the upper or left piece', ({ lost }) => small(lost.slideMm, lost.slideSeMm)],
    ['Step of the lines', ({ offset: { mm, seMm } }) => small(mm, seMm)],
    ['Line spacing', ({ offset: { spacingMm } }) => small(spacingMm)],
    ['Grain above or left', ({ grain: { angleADeg } }) => degrees(angleADeg)],
    ['Grain below or right', ({ grain: { angleBDeg } }) => degrees(angleBDeg)],
    ['Turn of the grain', ({ grain }) => degrees(grain.changeDeg, grain.changeSeDeg)],
    ['Colour step (CIEDE2000)', ({ colourStep: { deltaE00 } }) => fixed(deltaE00, 1)],
    ['Glue line, width', ({ glueLine: { widthMm } }) => small(widthMm)],
    ['Glue line, contrast', ({ glueLine: { contrast } }) => percent(contrast)],
    [
      'Such a break where there is no seam',
      ({ found, p }) => (found === 'placed' ? 'placed by hand' : percent(p)),
    ],
  ];
}

/** Few joints tell a wedge: the row stands only where one does. */
const wedgeRow = (units: LengthUnits): Row => [
  'More lost at the right or lower end',
  ({ lost: { wedgeMm = null, wedgeSeMm = null } }) => decimalLength(wedgeMm, wedgeSeMm, units),
];

function distanceOf({ visibility }: SeamResult, units: LengthUnits): string | null {
  if (visibility.v === null) return null;
  if (visibility.vanishesAtMm === null) return 'at no distance';
  return vanishingText(visibility.vanishesAtMm, units);
}

function fixed(value: number | null, places: number): string | null {
  return value === null ? null : value.toFixed(places);
}

function percent(share: number | null): string | null {
  if (share === null) return null;
  const percentage = 100 * share;
  return `${percentage < 1 && percentage > 0 ? percentage.toFixed(1) : percentage.toFixed(0)} %`;
}

function degrees(value: number | null, seDeg: number | null = null): string | null {
  if (value === null) return null;
  return `${minus(value.toFixed(1))}${seDeg === null ? '' : ` ± ${seDeg.toFixed(1)}`}°`;
}

/** Decimals, not marks of a rule: these are for comparing, not for setting a fence. */
function decimalLength(mm: number | null, seMm: number | null, { units }: LengthUnits) {
  if (mm === null) return null;
  const write = (value: number) =>
    units === 'in' ? (value / mmPerInch).toFixed(3) : value.toFixed(2);
  return `${minus(write(mm))}${seMm === null ? '' : ` ± ${write(seMm)}`} ${units}`;
}

function minus(text: string): string {
  return text.replace('-', '−');
}
