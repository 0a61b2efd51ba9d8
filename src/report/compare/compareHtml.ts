import type { ComparedCandidate, CompareResult } from '../../core/results/compareResult.js';
import { fractionsHtml } from '../html/fractionsHtml.js';
import { htmlPage } from '../html/htmlPage.js';
import { photoStore } from '../html/photoStore.js';
import { pictureTable } from '../html/pictureTable.js';
import { scaleText } from '../ramp/scaleText.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { photoName } from '../words/photoName.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';
import { comparePicture } from './comparePicture.js';
import { cutText } from './cutText.js';
import { gapText, lookTexts } from './describeCompare.js';
import { headlineOfCompare } from './headlineOfCompare.js';
import { reasonText } from './reasonText.js';
import { sawnByFace } from './sawnText.js';

/** Pictures of the page, as data URLs so that it stands alone. */
export interface ComparePage extends LengthUnits {
  /** The candidates' faces in the result's order, and the same small for the table. */
  readonly photoHrefs: readonly string[];
  readonly smallHrefs: readonly string[];
}

const photoId = 'candidate-photo-';

/**
 * The comparison as one self-contained page: the answer as a sentence, the candidates at one scale
 * with the best place on each, a table of all that was compared, and what it rests on.
 */
export function compareHtml(result: CompareResult, page: ComparePage): string {
  const { candidates, front } = result;
  const rows = candidates.map((candidate, i) => ({
    pictureHref: page.smallHrefs[i] ?? '',
    name: `${candidate.rank}. ${photoName(candidate.photo, Number.POSITIVE_INFINITY)}`,
    cells: [
      lookTexts(candidate, page).join(' '),
      reasonText(result, candidate) || 'Nothing to compare it with.',
      sawn(candidate),
      candidate.gapMm === null ? null : gapText(candidate.gapMm, page),
    ],
  }));
  const size = front
    ? `For a front of ${placeText(front.widthMm, page)} by ${placeText(front.heightMm, page)}, `
    : 'For a rip anywhere, ';
  const rests = [
    `${size}cut with a kerf of ${smallLengthText(result.kerfMm, page)}, seen from ${viewingDistanceText(result.distanceMm, page)}.`,
    ...notesOf(candidates),
    scaleText,
  ];
  const body = [
    `<h1>${fractionsHtml(headlineOfCompare(result))}</h1>`,
    photoStore(...page.photoHrefs.map((href, i): [string, string] => [`${photoId}${i + 1}`, href])),
    ...figures(result, page),
    `<h2>Side by side</h2>${pictureTable(['How it would look', 'What decides', 'How it is sawn', 'Seasonal gap'], rows)}`,
    `<h2>What this rests on</h2><ul class="plain">${rests.map((item) => `<li>${fractionsHtml(item)}</li>`).join('')}</ul>`,
  ];
  return htmlPage({ title: 'Candidates', body: body.join('') });
}

function sawn({ cut, cutFromFace, isImagined }: ComparedCandidate): string | null {
  if (cut) return cutText(cut);
  if (cutFromFace) return sawnByFace(cutFromFace);
  return isImagined ? 'As imagined' : null;
}

/** Every note once, with the candidates that it speaks of where it is not all of them. */
function notesOf(candidates: readonly ComparedCandidate[]): string[] {
  const all = new Set(candidates.flatMap(({ notes }) => notes));
  return [...all].map((note) => {
    const of = candidates.filter(({ notes }) => notes.includes(note));
    if (of.length === candidates.length) return note;
    return `${of.map(({ photo }) => photoName(photo)).join(', ')}: ${note}`;
  });
}

function figures(result: CompareResult, page: ComparePage): string[] {
  const widths = { desk: 1160, tablet: 720, phone: 360 } as const;
  const { units, denominator } = page;
  return Object.entries(widths).map(([name, widthPx]) => {
    const { svg } = comparePicture(result, {
      ...{ units, widthPx, photoId, idPrefix: name, headline: false },
      ...(denominator === undefined ? {} : { denominator }),
    });
    return `<figure class="${name}">${svg}</figure>`;
  });
}
