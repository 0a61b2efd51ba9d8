import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { ScoreDrawing } from '../score/scoreDrawing.js';
import { scorePicture } from '../score/scorePicture.js';
import { describeScore } from '../words/describeScore.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeSeams } from '../words/placeSeams.js';
import { fractionsHtml } from './fractionsHtml.js';
import { htmlPage } from './htmlPage.js';
import { photoStore } from './photoStore.js';
import { restsOn } from './restsOn.js';
import { scoreNumbers } from './scoreNumbers.js';

/** How a score's page is made: the photo as a data URL, so that the page stands alone. */
export interface ScorePage
  extends Pick<ScoreDrawing, 'units' | 'denominator' | 'photoHref' | 'grain' | 'distanceMm'> {
  /** Name of the page, default `Score of a glued panel`. */
  readonly title?: string;
}

/**
 * The score as one self-contained page: the answer as a sentence, the panel, each joint in words,
 * numbers one tap away, and what it all rests on. Bright or dark by the system's setting, drawn
 * anew for desk, tablet and phone width, black on white on paper.
 */
export function scoreHtml(result: ScoreResult, page: ScorePage): string {
  const { title = 'Score of a glued panel', photoHref, distanceMm } = page;
  const placed = placeSeams(result);
  const { headline, lines } = describeScore(result, page);
  const list = (items: readonly string[], tag: 'ol' | 'ul', className: string) =>
    items.length === 0
      ? ''
      : `<${tag} class="${className}">${items.map((item) => `<li>${fractionsHtml(item)}</li>`).join('')}</${tag}>`;
  const seamLines = lines.slice(0, placed.length);
  const body = [
    `<h1>${fractionsHtml(headline)}</h1>`,
    photoHref ? photoStore([photoId, photoHref]) : '',
    ...figures(result, page),
    placed.length === 0
      ? ''
      : `<h2>Joint by joint</h2>${list(seamLines, 'ol', 'seams')}${numbersBlock(placed, page)}`,
    `<h2>What this rests on</h2>${list(restsOn(result, page, distanceMm), 'ul', 'plain')}`,
  ];
  return htmlPage({ title, body: body.join('') });
}

const photoId = 'panel-photo';
/** Numbers of more joints than this are printed only where the reader has opened them. */
const mostPrinted = 8;

function numbersBlock(placed: readonly PlacedSeam[], page: ScorePage): string {
  const kind = placed.length > mostPrinted ? ' class="long"' : '';
  return `<details${kind}><summary>Numbers</summary>${scoreNumbers(placed, page)}</details>`;
}

function figures(result: ScoreResult, page: ScorePage): string[] {
  const widths = { desk: 1160, tablet: 720, phone: 360 } as const;
  return Object.entries(widths).map(([name, widthPx]) => {
    const picture = scorePicture(result, {
      ...page,
      widthPx,
      idPrefix: name,
      headline: false,
      ...(page.photoHref ? { photoId } : {}),
    });
    // A picture of a tall panel is narrower than the page and must not be blown up to it.
    const most =
      picture.widthPx < widthPx ? ` style="max-width:${Math.ceil(picture.widthPx)}px"` : '';
    return `<figure class="${name}"${most}>${picture.svg}</figure>`;
  });
}
