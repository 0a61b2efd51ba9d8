import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { fractionsHtml } from '../html/fractionsHtml.js';
import { htmlPage } from '../html/htmlPage.js';
import { photoStore } from '../html/photoStore.js';
import { placeText } from '../words/placeText.js';
import { describeEndgrain } from './describeEndgrain.js';
import { type EndgrainDrawing, endgrainPicture } from './endgrainPicture.js';

const photoId = 'end-photo';

/** The end as one self-contained page: the answer, the picture, the rest in words, numbers. */
export function endgrainHtml(
  result: EndgrainResult,
  page: Pick<EndgrainDrawing, 'units' | 'denominator' | 'photoHref'>,
): string {
  const { headline, lines } = describeEndgrain(result, page);
  const told = lines.filter((line) => !result.notes.includes(line));
  const { widthMm, heightMm, pxPerMm } = result.panel;
  const rests = [
    `The end is ${placeText(widthMm, page)} by ${placeText(heightMm, page)}, with ${pxPerMm.toFixed(1)} pixels of the photo to the millimetre.`,
    ...result.notes,
  ];
  const body = [
    `<h1>${fractionsHtml(headline)}</h1>`,
    page.photoHref ? photoStore([photoId, page.photoHref]) : '',
    ...figures(result, page),
    list(told),
    result.ringAngle.length > 0
      ? `<details><summary>Numbers</summary>${numbers(result, page)}</details>`
      : '',
    `<h2>What this rests on</h2>${list(rests)}`,
  ];
  return htmlPage({ title: 'End of a board', body: body.join('') });
}

const list = (items: readonly string[]) =>
  items.length === 0
    ? ''
    : `<ul class="plain">${items.map((item) => `<li>${fractionsHtml(item)}</li>`).join('')}</ul>`;

function figures(
  result: EndgrainResult,
  page: Pick<EndgrainDrawing, 'units' | 'denominator' | 'photoHref'>,
): string[] {
  const widths = { desk: 1160, tablet: 720, phone: 360 } as const;
  return Object.entries(widths).map(([name, widthPx]) => {
    const picture = endgrainPicture(result, {
      ...page,
      widthPx,
      idPrefix: name,
      headline: false,
      ...(page.photoHref ? { photoId } : {}),
    });
    return `<figure class="${name}">${picture.svg}</figure>`;
  });
}

function numbers(
  { ringAngle }: EndgrainResult,
  page: Pick<EndgrainDrawing, 'units' | 'denominator'>,
): string {
  const rows = ringAngle.map(
    ({ xMm, angleDeg, seDeg }) =>
      `<tr><th scope="row">${fractionsHtml(placeText(xMm, page))}</th><td>${angleDeg.toFixed(1)} deg</td><td>${seDeg.toFixed(1)} deg</td></tr>`,
  );
  return `<div class="scroll"><table><thead><tr><th scope="col">from the left</th><th scope="col">rings to the wide face</th><th scope="col">error</th></tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}
