import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import type { RgbImage } from '../../src/core/image/rgbImage.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import type { BoardSpec } from '../../src/core/wood/boardSpec.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import type { PanelSpec } from '../../src/core/wood/panelSpec.js';
import type { PanelTruth } from '../../src/core/wood/panelTruth.js';
import type { WoodCut, WoodSetting } from '../../src/core/wood/woodSetting.js';

/** Size of every drawn panel of the bench, mm, and its scale. */
export const benchWidthMm = 400;
export const benchHeightMm = 200;
export const benchPxPerMm = 6;

export const settings: readonly WoodSetting[] = ['ring-porous', 'diffuse-porous', 'softwood'];
export const cuts: readonly WoodCut[] = ['flatsawn', 'rift', 'quartered'];

/** A drawn panel as a photo, with its truth. */
export interface BenchPanel {
  readonly photo: PanelPhoto;
  readonly truth: PanelTruth;
  readonly spec: PanelSpec;
}

/** Order in which kinds are taken: any three in a row have every setting and every cut once. */
const kindOrder = [0, 4, 8, 1, 5, 6, 2, 3, 7];

/** Every setting and cut, `rounds` times over (thirds of a round allowed), each with its own seed. */
export function benchBoards(firstSeed: number, rounds: number): BoardSpec[] {
  const kinds = settings.flatMap((setting) => cuts.map((cut) => ({ setting, cut })));
  return Array.from({ length: Math.max(1, Math.round(rounds * kinds.length)) }, (_, i) => {
    const kind = kindOrder[i % kinds.length];
    return {
      seed: firstSeed + Math.floor(i / kinds.length) * kinds.length + kind,
      ...kinds[kind],
      lengthMm: benchWidthMm,
      widthMm: benchHeightMm,
    };
  });
}

/** Draws a panel square on and in flat light. */
export function drawBench(spec: PanelSpec, pxPerMm = benchPxPerMm): BenchPanel {
  const { image, truth } = drawPanel(spec, { pxPerMm });
  return { photo: photoOf(image, pxPerMm), truth, spec };
}

/** A square-on picture as the panel it shows. */
export function photoOf(image: RgbImage, pxPerMm: number): PanelPhoto {
  const [widthMm, heightMm] = [image.width / pxPerMm, image.height / pxPerMm];
  return { image, pxPerMm, widthMm, heightMm, notes: [] };
}

/** Two cuts of a board, a third of the way in from either side or so, turned a little. */
export function twoCuts(
  seed: number,
  acrossMm: number,
  draw: (random: ReturnType<typeof createRandom>) => { lostMm: number; slideMm: number },
) {
  const random = createRandom(seed);
  const tiltRad = () => random.uniform(-0.012, 0.012);
  return [
    { atMm: acrossMm * random.uniform(0.24, 0.4), ...draw(random), tiltRad: tiltRad() },
    { atMm: acrossMm * random.uniform(0.6, 0.76), ...draw(random), tiltRad: tiltRad() },
  ];
}
