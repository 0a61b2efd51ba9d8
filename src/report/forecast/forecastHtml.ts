import type { ForecastResult } from '../../core/results/forecastResult.js';
import { fractionsHtml } from '../html/fractionsHtml.js';
import { htmlPage } from '../html/htmlPage.js';
import { photoStore } from '../html/photoStore.js';
import { wipeBlock } from '../html/wipeBlock.js';
import { scorePicture } from '../score/scorePicture.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { describeDepth } from './describeDepth.js';
import { widthText } from './describeForecast.js';
import { describeRip } from './describeRip.js';
import { disagreementTexts } from './disagreementTexts.js';
import { forecastPicture } from './forecastPicture.js';
import { forecastRestsOn } from './forecastRestsOn.js';
import { headlineOfForecast } from './headlineOfForecast.js';
import { imaginedTable } from './imaginedTable.js';
import { placementTable } from './placementTable.js';
import { regluedScore } from './regluedScore.js';
import { ripTable } from './ripTable.js';

/** Pictures of a forecast's page, as data URLs so that it stands alone. */
export interface ForecastPage extends LengthUnits {
  /** The uncut panel. */
  readonly photoHref: string;
  /** The panel glued up again; absent when nothing was to be cut. */
  readonly regluedHref?: string;
  /** The same on a canvas of the uncut panel's size, for the wipe. */
  readonly afterHref?: string;
  /** Each placement glued up again, small, in their order. */
  readonly placementHrefs?: readonly string[];
  /** Name of the page, default `Before the rip`. */
  readonly title?: string;
}

/**
 * The forecast as one self-contained page: the answer as a sentence, the panel with the cost of
 * every rip beside it, the panel glued up again, places and rips compared, and what it rests on.
 */
export function forecastHtml(result: ForecastResult, page: ForecastPage): string {
  const { title = 'Before the rip' } = page;
  const { rips, placements, disagreements, depth, imagined } = result;
  const section = (heading: string, body: string) => (body ? `<h2>${heading}</h2>${body}` : '');
  const careful = [
    ...(result.curve.length > 0 ? [widthText(result, page)] : []),
    ...disagreementTexts(disagreements, page),
    ...(depth ? [describeDepth(depth, page)] : []),
  ];
  const body = [
    `<h1>${fractionsHtml(headlineOfForecast(result, page))}</h1>`,
    photoStore(['uncut-photo', page.photoHref]),
    page.regluedHref ? photoStore(['reglued-photo', page.regluedHref]) : '',
    listOf(result.notes, 'plain'),
    section('Glued up again', gluedUp(result, page)),
    section(
      'What every rip would cost',
      figures((widthPx, name) =>
        forecastPicture(result, {
          ...{ units: page.units, ...(page.denominator ? { denominator: page.denominator } : {}) },
          ...{ photoId: 'uncut-photo', widthPx, idPrefix: `uncut-${name}`, headline: false },
        }),
      ),
    ),
    section('Places for the front', placementTable(placements, page.placementHrefs ?? [], page)),
    section(
      'The rips',
      listOf(
        rips.map((rip) => describeRip(rip, page)),
        'seams',
      ),
    ),
    rips.length > 0 ? `<details><summary>Numbers</summary>${ripTable(result, page)}</details>` : '',
    section('To bear in mind', listOf(careful, 'plain')),
    section('From other wood', imagined.length > 0 ? imaginedTable(result) : ''),
    section('What this rests on', listOf(forecastRestsOn(result, page), 'plain')),
  ];
  return htmlPage({ title, body: body.join(''), withScript: page.afterHref !== undefined });
}

function gluedUp(result: ForecastResult, page: ForecastPage): string {
  const score = regluedScore(result);
  if (!score || !page.regluedHref) return '';
  const { widthMm, heightMm } = result.panel;
  const wipe = page.afterHref
    ? wipeBlock({
        ...{ beforeHref: page.photoHref, afterHref: page.afterHref },
        ...{ widthPx: Math.round(10 * widthMm), heightPx: Math.round(10 * heightMm) },
      })
    : '';
  const drawn = figures((widthPx, name) =>
    scorePicture(score, {
      ...{ units: page.units, ...(page.denominator ? { denominator: page.denominator } : {}) },
      ...{ photoId: 'reglued-photo', widthPx, idPrefix: `reglued-${name}`, headline: false },
      distanceMm: result.distanceMm,
    }),
  );
  const reveal = result.placements.length > 0 ? `<p>${revealText}</p>` : '';
  return wipe + reveal + drawn;
}

const revealText =
  'The dark lines round the front are its reveal and the saw’s kerf, meant to be seen. Judged is whether the grain runs on across them.';

/** A drawing made anew for desk, tablet and phone. */
function figures(
  draw: (widthPx: number, name: string) => { readonly svg: string; readonly widthPx: number },
): string {
  const widths = { desk: 1160, tablet: 720, phone: 360 } as const;
  return Object.entries(widths)
    .map(([name, wanted]) => {
      const { svg, widthPx } = draw(wanted, name);
      const most = widthPx < wanted ? ` style="max-width:${Math.ceil(widthPx)}px"` : '';
      return `<figure class="${name}"${most}>${svg}</figure>`;
    })
    .join('');
}

function listOf(items: readonly string[], className: 'seams' | 'plain'): string {
  if (items.length === 0) return '';
  const tag = className === 'seams' ? 'ol' : 'ul';
  return `<${tag} class="${className}">${items.map((item) => `<li>${fractionsHtml(item)}</li>`).join('')}</${tag}>`;
}
