import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { fractionsHtml } from '../html/fractionsHtml.js';
import { htmlPage } from '../html/htmlPage.js';
import { photoStore } from '../html/photoStore.js';
import { scaleText } from '../ramp/scaleText.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';
import { arrangePicture } from './arrangePicture.js';
import { boardLie, boardName } from './boardName.js';
import { jointWords, proofOf, slideWords } from './describeArrange.js';
import { headlineOfArrange } from './headlineOfArrange.js';

/** Pictures of the page, as data URLs so that it stands alone. */
export interface ArrangePage extends LengthUnits {
  /** Photos of the faces that show, in the result's order. */
  readonly photoHrefs: readonly string[];
  readonly jointMm: number;
  readonly distanceMm: number;
}

const photoId = 'board-photo-';

/**
 * The arranged panel as one self-contained page: the answer as a sentence, the panel as it would
 * be glued, each board and joint in words, and what it rests on.
 */
export function arrangeHtml(result: ArrangeResult, page: ArrangePage): string {
  const { order, joints, conflicts, panel } = result;
  const lines = order.map((board, i) => {
    const joint = joints[i];
    const lie = [boardLie(board), slideWords(board, page)].filter(Boolean).join(', ');
    const below = joint ? `. The joint below it ${jointWords(joint)}` : '';
    return `${boardName(board, Number.POSITIVE_INFINITY)}${lie ? `: ${lie}` : ''}${below}.`;
  });
  const rests = [
    proofOf(result),
    `The panel is ${placeText(panel.lengthMm, page)} by ${placeText(panel.widthMm, page)}, judged for someone who stands ${viewingDistanceText(page.distanceMm, page)} away.`,
    ...result.notes,
    scaleText,
  ];
  const body = [
    `<h1>${fractionsHtml(headlineOfArrange(result))}</h1>`,
    photoStore(...page.photoHrefs.map((href, i): [string, string] => [`${photoId}${i + 1}`, href])),
    ...figures(result, page),
    `<h2>From the top down</h2>${list(lines, 'ol', 'seams')}`,
    conflicts.length > 0
      ? `<h2>Before the plane</h2>${list(
          conflicts.map(({ text }) => text),
          'ul',
          'plain',
        )}`
      : '',
    `<h2>What this rests on</h2>${list(rests, 'ul', 'plain')}`,
  ];
  return htmlPage({ title: 'Boards in order', body: body.join('') });
}

function figures(result: ArrangeResult, page: ArrangePage): string[] {
  const widths = { desk: 1160, tablet: 720, phone: 360 } as const;
  const { units, denominator, jointMm } = page;
  return Object.entries(widths).map(([name, widthPx]) => {
    const picture = arrangePicture(result, {
      ...{ units, jointMm, widthPx, photoId, idPrefix: name, headline: false },
      ...(denominator === undefined ? {} : { denominator }),
    });
    const most =
      picture.widthPx < widthPx ? ` style="max-width:${Math.ceil(picture.widthPx)}px"` : '';
    return `<figure class="${name}"${most}>${picture.svg}</figure>`;
  });
}

function list(items: readonly string[], tag: 'ol' | 'ul', className: string): string {
  return `<${tag} class="${className}">${items.map((item) => `<li>${fractionsHtml(item)}</li>`).join('')}</${tag}>`;
}
