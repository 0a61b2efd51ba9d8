import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { findSeams } from '../../src/core/seam/find/findSeams.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';
import { bootstrap, sharePercent } from './accuracyIntervals.js';
import { photoOf } from './accuracyPanels.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import { fetchDebianFile } from './fetchDebianFile.js';

/** The photos' scale is not known; 4 px/mm is an assumption. */
const pxPerMm = 4;
const section = 'Real photographs, 4 px/mm assumed';

const shared = process.env.SEAMGRAIN_PHOTOS ?? join('..', 'shared', 'photos');
const fetched = join('out', 'bench', 'photos');

const textures =
  '/usr/lib/x86_64-linux-gnu/qt5/examples/qt3d/exampleresources/assets/textures/american_walnut_crown_cut';

/** Photographs that Debian's packages carry, fetched when the bench runs. */
const debian = [
  ['libelementary-data', '/usr/share/elementary/images/wood_01.jpg', 'wood_01.jpg'],
  [
    'qt3d5-examples',
    `${textures}/american_walnut_crown_cut_basecolor.png`,
    'american_walnut_crown_cut_basecolor.png',
  ],
] as const;

/** Continuous wood to cut; `upright` grain is turned to run along x, rows above `clearOfPx` left out. */
const whole: readonly {
  readonly file: string;
  readonly upright: boolean;
  readonly clearOfPx?: number;
  readonly from: string;
}[] = [
  { file: join(shared, 'oak-veneer-no-joint.jpg'), upright: true, from: 'the shared photos' },
  {
    file: join(fetched, 'wood_01.jpg'),
    upright: true,
    // A glued panel: its left board ends at a joint, 300 px from the left.
    clearOfPx: 310,
    from: "Debian's libelementary-data",
  },
  {
    file: join(fetched, 'american_walnut_crown_cut_basecolor.png'),
    upright: false,
    from: "Debian's qt3d5-examples",
  },
];

/** Glued or laid boards with joints read by eye, px (SOURCES.md beside the photos). */
const jointed = [
  {
    file: join(shared, 'oak-nine-boards.jpg'),
    upright: true,
    joints: [113, 227, 341, 454, 568, 682, 796, 909],
  },
  { file: join(shared, 'softwood-rows.jpg'), upright: false, joints: [137, 258, 383] },
  { file: join(fetched, 'wood_01.jpg'), upright: true, joints: [300] },
];

/** Real texture, known kerf: a strip cut out of continuous wood, beside the same wood not cut. */
export async function accuracyReal(places: number) {
  const rows: AccuracyRow[] = [];
  const notes: string[] = [];
  for (const [from, path, name] of debian) fetchDebianFile(from, path, join(fetched, name));
  for (const { file, upright, clearOfPx = 0, from } of whole) {
    if (!existsSync(file)) {
      notes.push(`Not measured: ${file} is absent (it comes from ${from}).`);
      continue;
    }
    const image = withoutRows(await load(file, upright), 0, clearOfPx);
    rows.push(...cutRows(file.split('/').pop() ?? file, image, places));
  }
  for (const { file, upright, joints } of jointed) {
    if (!existsSync(file)) {
      notes.push(`Not measured: ${file} is absent.`);
      continue;
    }
    const photo = photoOf(await load(file, upright), pxPerMm);
    const found = findSeams(panelPlanes(photo), createRandom(1)).filter((s) => s.kind === 'rip');
    const middles = found.map(({ line }) => ((line.y1Mm + line.y2Mm) / 2) * pxPerMm);
    const name = file.split('/').pop();
    const hits = joints.filter((y) => middles.some((m) => Math.abs(m - y) <= 6)).length;
    const wrong = middles.filter((m) => joints.every((y) => Math.abs(m - y) > 12)).length;
    rows.push(
      accuracyRow(
        section,
        `${name}: joints found within 6 px of the eye's reading, %`,
        joints.length,
        sharePercent(hits, joints.length),
        0,
        { least: 90 },
      ),
      accuracyRow(
        section,
        `${name}: found rips that the eye does not see, number`,
        found.length,
        { value: wrong, low: Number.NaN, high: Number.NaN },
        0,
        { most: 0 },
      ),
    );
  }
  return { rows, notes };
}

function cutRows(name: string, image: RgbImage, places: number): AccuracyRow[] {
  const v: { readonly cut: boolean; readonly v: number }[] = [];
  let found = 0;
  for (let i = 0; i < places; i++) {
    // Strips of 11, 12, 13 ... px: the JPEG grid of 8 px never lines up twice the same way.
    const strip = 11 + (i % 6);
    const y = Math.round(image.height * (0.25 + (0.5 * (i + 0.5)) / places));
    const cut = photoOf(withoutRows(image, y, strip), pxPerMm);
    v.push(
      { cut: true, v: placedV(cut, y) },
      { cut: false, v: placedV(photoOf(image, pxPerMm), y) },
    );
    const lines = findSeams(panelPlanes(cut), createRandom(1));
    if (
      lines.some(
        ({ kind, line }) =>
          kind === 'rip' && Math.abs((line.y1Mm + line.y2Mm) / 2 - y / pxPerMm) <= 1,
      )
    ) {
      found++;
    }
  }
  const falseSeams = findSeams(panelPlanes(photoOf(image, pxPerMm)), createRandom(1)).length;
  const pairs = Array.from({ length: places }, (_, i) => v.slice(2 * i, 2 * i + 2));
  return [
    accuracyRow(section, `${name}: V of cut against sham, AUC`, places, bootstrap(pairs, auc), 2, {
      least: 0.9,
    }),
    accuracyRow(
      section,
      `${name}: cut found within 1 mm, %`,
      places,
      sharePercent(found, places),
      0,
    ),
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

function auc(values: readonly { readonly cut: boolean; readonly v: number }[]): number {
  const cut = values.filter((x) => x.cut);
  const sham = values.filter((x) => !x.cut);
  let sum = 0;
  for (const a of cut) for (const b of sham) sum += a.v > b.v ? 1 : a.v === b.v ? 0.5 : 0;
  return sum / (cut.length * sham.length);
}

function placedV(photo: ReturnType<typeof photoOf>, y: number): number {
  const line = { x1Mm: 0, x2Mm: photo.widthMm, y1Mm: y / pxPerMm, y2Mm: y / pxPerMm };
  const options = { ...defaultScoreOptions, find: false, placedSeams: [line] };
  return scorePanel(photo, options).seams[0].visibility.v ?? 0;
}

function withoutRows({ width, height, data }: RgbImage, y: number, rows: number): RgbImage {
  const kept = new Uint8Array(3 * width * (height - rows));
  kept.set(data.subarray(0, 3 * width * y));
  kept.set(data.subarray(3 * width * (y + rows)), 3 * width * y);
  return { width, height: height - rows, data: kept };
}

async function load(file: string, upright: boolean): Promise<RgbImage> {
  const turned = upright ? sharp(file).rotate(90) : sharp(file);
  const { data, info } = await turned
    .flatten()
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}
