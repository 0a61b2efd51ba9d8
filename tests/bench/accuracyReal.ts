import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { findSeams } from '../../src/core/seam/find/findSeams.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';
import { sharePercent } from './accuracyIntervals.js';
import { photoOf } from './accuracyPanels.js';
import { realPxPerMm as pxPerMm, realCutRows } from './accuracyRealCuts.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import { fetchDebianFile } from './fetchDebianFile.js';

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
  {
    file: join(shared, 'softwood-rows.jpg'),
    upright: false,
    // Eight rows of about 63 px: three of the joints stand in SOURCES.md (131 as 137), looked at again.
    joints: [66, 131, 196, 258, 321, 383, 447],
  },
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
    const image = await load(file, upright, clearOfPx);
    rows.push(...realCutRows(section, file.split('/').pop() ?? file, image, places));
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

async function load(file: string, upright: boolean, clearOfPx = 0): Promise<RgbImage> {
  const turned = upright ? sharp(file).rotate(90) : sharp(file);
  const { data, info } = await turned
    .flatten()
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  return { width, height: height - clearOfPx, data: data.subarray(3 * width * clearOfPx) };
}
