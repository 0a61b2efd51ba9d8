import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import type { LineMm } from '../../src/core/results/scoreResult.js';
import { findSeams } from '../../src/core/seam/find/findSeams.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';
import { bootstrap, sharePercent } from './accuracyIntervals.js';
import { photoOf } from './accuracyPanels.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';

/** The photos' scale is not known; 4 px/mm is an assumption. */
export const realPxPerMm = 4;

/** A way to cut a photograph of continuous wood: a strip taken out at a line, one side slid along it. */
interface RealCut {
  readonly what: string;
  readonly kind: 'rip' | 'crosscut';
  readonly slidePx: number;
}

const cuts: readonly RealCut[] = [
  { what: 'rips', kind: 'rip', slidePx: 0 },
  // Lines run across it, so what a photograph of a joint can tell is there to be told.
  { what: 'crosscuts slid 1.5 mm', kind: 'crosscut', slidePx: 6 },
];

/** Places of one photograph cut and, beside them, the same places uncut. */
export function realCutRows(
  section: string,
  name: string,
  image: RgbImage,
  places: number,
): AccuracyRow[] {
  const falseSeams = findSeams(panelPlanes(photoOf(image, realPxPerMm)), createRandom(1)).length;
  return [
    ...cuts.flatMap((cut) => rowsOf(section, name, image, places, cut)),
    accuracyRow(
      section,
      `${name}: false seams in the uncut photo, number`,
      1,
      { value: falseSeams, low: Number.NaN, high: Number.NaN },
      0,
      { most: 0 },
    ),
  ];
}

function rowsOf(
  section: string,
  name: string,
  image: RgbImage,
  places: number,
  { what, kind, slidePx }: RealCut,
): AccuracyRow[] {
  const long = kind === 'rip' ? image.height : image.width;
  const pairs = Array.from({ length: places }, (_, i) => {
    // Strips of 11, 12, 13 ... px: the JPEG grid of 8 px never lines up twice the same way.
    const strip = 11 + (i % 6);
    const atPx = Math.round(long * (0.25 + (0.5 * (i + 0.5)) / places));
    const cut = photoOf(cutPicture(image, kind, atPx, strip, slidePx), realPxPerMm);
    const at = atPx / realPxPerMm;
    const found = findSeams(panelPlanes(cut), createRandom(1)).some(
      (seam) => seam.kind === kind && Math.abs(middleOf(seam.line, kind) - at) <= 1,
    );
    const sham = placedV(photoOf(image, realPxPerMm), kind, at);
    return { found, cut: placedV(cut, kind, at), sham };
  });
  const found = pairs.filter((pair) => pair.found).length;
  return [
    accuracyRow(
      section,
      `${name}, ${what}: V of cut against sham, AUC`,
      places,
      bootstrap(
        pairs.map((pair) => [pair]),
        auc,
      ),
      2,
      { least: 0.9 },
    ),
    accuracyRow(
      section,
      `${name}, ${what}: cut found within 1 mm, %`,
      places,
      sharePercent(found, places),
      0,
    ),
  ];
}

function auc(pairs: readonly { readonly cut: number; readonly sham: number }[]): number {
  let sum = 0;
  for (const { cut } of pairs) {
    for (const { sham } of pairs) sum += cut > sham ? 1 : cut === sham ? 0.5 : 0;
  }
  return sum / pairs.length ** 2;
}

const middleOf = (line: LineMm, kind: RealCut['kind']) =>
  kind === 'rip' ? (line.y1Mm + line.y2Mm) / 2 : (line.x1Mm + line.x2Mm) / 2;

function placedV(photo: PanelPhoto, kind: RealCut['kind'], at: number): number {
  const line =
    kind === 'rip'
      ? { x1Mm: 0, x2Mm: photo.widthMm, y1Mm: at, y2Mm: at }
      : { x1Mm: at, x2Mm: at, y1Mm: 0, y2Mm: photo.heightMm };
  const options = { ...defaultScoreOptions, find: false, placedSeams: [line] };
  return scorePanel(photo, options).seams[0].visibility.v ?? 0;
}

/** The picture without `strip` px at a line, what lies beyond it moved along the line by slidePx. */
function cutPicture(
  { width, height, data }: RgbImage,
  kind: RealCut['kind'],
  atPx: number,
  strip: number,
  slidePx: number,
): RgbImage {
  const rip = kind === 'rip';
  const [w, h] = rip ? [width - slidePx, height - strip] : [width - strip, height - slidePx];
  const out = new Uint8Array(3 * w * h);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const beyond = (rip ? y : x) >= atPx;
      const [dx, dy] = !beyond ? [0, 0] : rip ? [slidePx, strip] : [strip, slidePx];
      const from = 3 * ((y + dy) * width + x + dx);
      out.set(data.subarray(from, from + 3), 3 * (y * w + x));
    }
  }
  return { width: w, height: h, data: out };
}
