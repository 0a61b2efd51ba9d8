import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { arrangeBoards } from '../../src/core/board/arrange/arrangeBoards.js';
import { defaultArrangeOptions } from '../../src/core/board/arrange/arrangeOptions.js';
import { noRules } from '../../src/core/board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../../src/core/board/arrange/boardPhotos.js';
import { readJointTable } from '../../src/core/board/arrange/readJointTable.js';
import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { type BoardSet, shuffled } from './boardSets.js';
import { isTrueOrder } from './boardsRecovery.js';
import { fetchDebianFile } from './fetchDebianFile.js';

/** The photos' scale is not known; 4 px/mm is an assumption, as in the accuracy bench. */
const pxPerMm = 4;
/** Whole pixels lost between strips: 1 mm, taken off the photo, nothing left for jointing. */
const lostPx = 4;

const shared = process.env.SEAMGRAIN_PHOTOS ?? join('..', 'shared', 'photos');
const fetched = join('out', 'bench', 'photos');
const textures =
  '/usr/lib/x86_64-linux-gnu/qt5/examples/qt3d/exampleresources/assets/textures/american_walnut_crown_cut';

/** A photograph of one piece of wood, the part to cut (photo pixels) and how its grain lies. */
interface WholePhoto {
  readonly name: string;
  readonly file: string;
  readonly upright: boolean;
  readonly crop?: { left: number; top: number; width: number; height: number };
  readonly from: string;
}

const whole: readonly WholePhoto[] = [
  {
    name: 'oak-veneer-no-joint.jpg',
    file: join(shared, 'oak-veneer-no-joint.jpg'),
    upright: true,
    from: 'the shared photos',
  },
  {
    // A glued panel of softwood staves: by eye one joint at x about 302 px; the stave right of it.
    name: 'wood_01.jpg, its right stave',
    file: join(fetched, 'wood_01.jpg'),
    upright: true,
    crop: { left: 308, top: 0, width: 322, height: 640 },
    from: "Debian's libelementary-data",
  },
  {
    name: 'american_walnut_crown_cut_basecolor.png',
    file: join(fetched, 'american_walnut_crown_cut_basecolor.png'),
    upright: false,
    from: "Debian's qt3d5-examples",
  },
];

/** Nine boards in one photo, joints read by eye (SOURCES.md beside it): strangers to each other. */
const nine = {
  file: join(shared, 'oak-nine-boards.jpg'),
  jointsPx: [0, 113, 227, 341, 454, 568, 682, 796, 909, 1024],
};

/** docs/boards-real.md: real wood cut up and laid again, as it came out. */
export async function boardsReal(): Promise<string> {
  fetchDebianFile('libelementary-data', '/usr/share/elementary/images/wood_01.jpg', whole[1]!.file);
  fetchDebianFile(
    'qt3d5-examples',
    `${textures}/american_walnut_crown_cut_basecolor.png`,
    whole[2]!.file,
  );
  const rows: string[] = [];
  for (const photo of whole) rows.push(...(await rowsOf(photo)));
  return `# Real wood cut up and laid again

\`npm run bench:boards -- --real\` wrote this. Photographs of real wood, each cut along its grain into
3 or 4 strips with 1 mm (4 px) thrown away between them, shuffled and about half of them turned; the
scale is assumed (4 px/mm), so boards are 256 mm long or less: far shorter than the 900 mm of the
drawn ones. Strips of one photograph share its light. Each photo is cut at 6 different places.

The first run, before anything was changed (and with the upright photographs cut from their other
side), laid 11 of the 36 sets right, and said 'as they grew' of 28 sets though the order was wrong in
nearly all of those; 2 of the 12 choices of strangers were taken for one face. That led to one rule: an order is called grown only when the figure speaks for
it a hundred times more than for any other (ln 100, chosen from what it means, not by trying
values). So these photographs are no longer unseen; the figures below are with that rule.

| photograph | strips | sets | right | as one face | right by least V alone | V^3 as laid | least |
| --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join('\n')}

${await strangers()}
`;
}

async function rowsOf({ name, file, upright, crop, from }: WholePhoto): Promise<string[]> {
  if (!existsSync(file)) return [`| ${name}: absent (it comes from ${from}) | | | | | | | |`];
  const image = await load(file, upright, crop);
  return [3, 4].map((count) => {
    const sets = Array.from({ length: 6 }, (_, i) => layAgain(cutUp(image, count, i)));
    const number = (test: (set: (typeof sets)[number]) => boolean) => sets.filter(test).length;
    const mean = (of: (set: (typeof sets)[number]) => number) =>
      (sets.reduce((sum, set) => sum + of(set), 0) / sets.length).toFixed(1);
    const cells = [
      name,
      `${count} of ${sets[0]!.widthMm.toFixed(0)} mm`,
      sets.length,
      number((set) => set.isRight),
      number((set) => set.isOneFace),
      number((set) => set.isRightByV),
      mean((set) => set.cost),
      mean((set) => set.leastCost),
    ];
    return `| ${cells.join(' | ')} |`;
  });
}

/** Cuts the photo into strips at one of several places, shuffles and turns them. */
function cutUp(image: RgbImage, count: number, place: number): BoardSet & { widthMm: number } {
  const random = createRandom(9000 + 10 * count + place);
  // Every place leaves a few pixels more off the top, so that no two sets share a cut.
  const offPx = 7 * place;
  const stripPx = Math.floor((image.height - offPx - (count - 1) * lostPx) / count);
  const strip = shuffled(count, random);
  const turned = strip.map(() => random.next() < 0.5);
  const boards = strip.map((k, i): BoardPhotos => {
    const rows = rowsOfImage(image, offPx + k * (stripPx + lostPx), stripPx);
    const photo = photoOf(turned[i] ? halfTurn(rows) : rows);
    return { faceA: { photo, name: `strip ${k + 1}` }, faceB: null };
  });
  return { name: `place ${place}`, boards, strip, turned, widthMm: stripPx / pxPerMm };
}

const options = { ...defaultArrangeOptions, kerfMm: lostPx / pxPerMm };

/** Has the strips laid, and tells what came of it. */
function layAgain(set: ReturnType<typeof cutUp>) {
  const table = readJointTable(set.boards, options);
  const grown = arrangeBoards(table, noRules);
  const least = arrangeBoards(table, { ...noRules, asGrown: false });
  return {
    isRight: isTrueOrder(grown, set),
    isOneFace: grown.laid === 'asGrown',
    isRightByV: isTrueOrder(least, set),
    cost: grown.totalCost,
    leastCost: least.totalCost,
    widthMm: set.widthMm,
  };
}

/** Boards that never were one face must not be laid as if they had been. */
async function strangers(): Promise<string> {
  if (!existsSync(nine.file)) return `Not run: ${nine.file} is absent.`;
  const image = await load(nine.file, true);
  // Turned by 90 degrees clockwise: the photo's left edge is the picture's top.
  const boards = nine.jointsPx.slice(1).map((to, i): BoardPhotos => {
    const from = nine.jointsPx[i]! + 3;
    const photo = photoOf(rowsOfImage(image, from, to - 3 - from));
    return { faceA: { photo, name: `board ${i + 1}` }, faceB: null };
  });
  let taken = 0;
  const runs = 12;
  for (let run = 0; run < runs; run++) {
    const chosen = shuffled(boards.length, createRandom(run)).slice(0, 4 + (run % 3));
    const table = readJointTable(
      chosen.map((k) => boards[k]!),
      defaultArrangeOptions,
    );
    if (arrangeBoards(table, noRules).laid === 'asGrown') taken++;
  }
  return `Strangers: 4 to 6 of the nine boards of oak-nine-boards.jpg (28 mm wide at the assumed scale), ${runs} choices: taken for one face by mistake in ${taken}.`;
}

const photoOf = (image: RgbImage): PanelPhoto => ({
  image,
  pxPerMm,
  widthMm: image.width / pxPerMm,
  heightMm: image.height / pxPerMm,
  notes: [],
});

function rowsOfImage({ width, data }: RgbImage, top: number, height: number): RgbImage {
  return { width, height, data: data.slice(3 * width * top, 3 * width * (top + height)) };
}

function halfTurn({ width, height, data }: RgbImage): RgbImage {
  const out = new Uint8Array(data.length);
  const pixels = width * height;
  for (let i = 0; i < pixels; i++) {
    for (let c = 0; c < 3; c++) out[3 * i + c] = data[3 * (pixels - 1 - i) + c]!;
  }
  return { width, height, data: out };
}

async function load(file: string, upright: boolean, crop?: WholePhoto['crop']): Promise<RgbImage> {
  const cropped = crop ? sharp(file).extract(crop) : sharp(file);
  const flat = await cropped.flatten().toColourspace('srgb').png().toBuffer();
  // A quarter turn clockwise puts the photo's bottom edge on the left and its left edge on top.
  const turned = upright ? sharp(flat).rotate(90) : sharp(flat);
  const { data, info } = await turned.removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}
