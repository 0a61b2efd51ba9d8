import type { BoardPhotos } from '../../src/core/board/arrange/boardPhotos.js';
import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import type { BoardSpec } from '../../src/core/wood/boardSpec.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { mixedBoardsPanel } from '../../src/core/wood/mixedBoardsPanel.js';
import { photograph } from '../../src/core/wood/photograph.js';
import type { WoodCut, WoodSetting } from '../../src/core/wood/woodSetting.js';

/** Boards as they lie on the bench, and how they once were one face. */
export interface BoardSet {
  readonly name: string;
  readonly boards: readonly BoardPhotos[];
  /** Which strip of the face each board was, from the top; whether its photo shows it turned. */
  readonly strip: readonly number[];
  readonly turned: readonly boolean[];
}

const settings: readonly WoodSetting[] = ['ring-porous', 'diffuse-porous', 'softwood'];

/**
 * One drawn face cut into 4 to 8 boards, shuffled, some turned, each photographed by itself.
 *
 * @param seed of everything. @param lostMm sawn away between neighbours before the photos.
 */
export function oneFaceSet(
  seed: number,
  cut: WoodCut,
  options: { readonly lengthMm: number; readonly pxPerMm: number; readonly lostMm: number },
): BoardSet {
  const random = createRandom(seed);
  const count = 4 + random.integer(5);
  const setting = settings[random.integer(3)]!;
  const heights = Array.from({ length: count }, () => Math.round(random.uniform(45, 75)));
  const tops = heights.map((_, i) =>
    heights.slice(0, i).reduce((sum, mm) => sum + mm + options.lostMm, 0),
  );
  const widthMm = tops[count - 1]! + heights[count - 1]!;
  const board: BoardSpec = { seed, setting, cut, lengthMm: options.lengthMm, widthMm };
  const strip = shuffled(count, random);
  const turned = strip.map(() => random.next() < 0.5);
  const boards = strip.map((k, i) => {
    const [heightMm, vMm] = [heights[k]!, tops[k]!];
    const spec = { board, heightMm, vMm, turned: turned[i]! };
    return photographed(`board ${i + 1}`, spec, options, 100 * seed + i);
  });
  return { name: `${cut} ${setting} seed ${seed}, ${count} boards`, boards, strip, turned };
}

/** Boards from as many different trees, of any cut. */
export function mixedSet(
  seed: number,
  count: number,
  options: { readonly lengthMm: number; readonly pxPerMm: number; readonly heightMm?: number },
  withFaceB = false,
): readonly BoardPhotos[] {
  const random = createRandom(seed);
  const cuts: readonly WoodCut[] = ['flatsawn', 'rift', 'quartered'];
  return Array.from({ length: count }, (_, i) => {
    const heightMm = options.heightMm ?? Math.round(random.uniform(55, 90));
    const board: BoardSpec = {
      seed: 1000 * seed + i,
      setting: settings[seed % 3]!,
      cut: cuts[random.integer(3)]!,
      lengthMm: options.lengthMm,
      widthMm: heightMm,
    };
    const name = `board ${i + 1}`;
    const a = photographed(name, { board, heightMm }, options, 100 * seed + i);
    if (!withFaceB) return a;
    const b = photographed(name, { board, heightMm, face: 'B' }, options, 100 * seed + i + 50);
    return { faceA: a.faceA, faceB: { ...b.faceA, name: `${name} face B` } };
  });
}

/** One board under a phone's camera, cropped: soft focus, noise, exposure a little off. */
function photographed(
  name: string,
  entry: Parameters<typeof mixedBoardsPanel>[0]['boards'][number],
  { lengthMm, pxPerMm }: { readonly lengthMm: number; readonly pxPerMm: number },
  seed: number,
): BoardPhotos {
  const panel = mixedBoardsPanel({ widthMm: lengthMm, boards: [entry] });
  const photo = panelPhotoOf(drawPanel(panel, { pxPerMm }).image, pxPerMm, seed);
  return { faceA: { photo, name }, faceB: null };
}

function panelPhotoOf(image: RgbImage, pxPerMm: number, seed: number): PanelPhoto {
  const { width, height } = image;
  const cornersPx = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ] as const;
  const camera = { widthPx: width, heightPx: height, cornersPx };
  const lens = { blurPx: 0.6, fullWell: 9000, readNoise: 0.002 };
  const shot = photograph(image, { ...camera, ...lens, seed });
  return {
    image: shot.image,
    pxPerMm,
    widthMm: width / pxPerMm,
    heightMm: height / pxPerMm,
    notes: [],
  };
}

/** The numbers from 0 to count - 1 in a random order. */
export function shuffled(count: number, random: ReturnType<typeof createRandom>): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = random.integer(i + 1);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
