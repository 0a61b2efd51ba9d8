import sharp from 'sharp';
import type { PanelPhoto } from '../../dist/core/image/panelPhoto.js';
import type { RgbImage } from '../../dist/core/image/rgbImage.js';
import { createRandom } from '../../dist/core/random/createRandom.js';
import { aimCamera } from '../../dist/core/wood/aimCamera.js';
import { type DrawnPanel, drawPanel } from '../../dist/core/wood/drawPanel.js';
import type { PanelSpec } from '../../dist/core/wood/panelSpec.js';
import { photograph } from '../../dist/core/wood/photograph.js';
import { loadOpenCv } from '../../dist/vision/node/loadOpenCv.js';
import { rectify } from '../../dist/vision/rectify.js';

/** A picture as JPEG and back: another quality, another set of faults. */
export async function compressed(image: RgbImage, quality: number): Promise<RgbImage> {
  const { width, height } = image;
  const jpeg = await sharp(image.data, { raw: { width, height, channels: 3 } })
    .jpeg({ quality })
    .toBuffer();
  return { width, height, data: await sharp(jpeg).raw().toBuffer() };
}

let last: { readonly spec: PanelSpec; readonly panel: DrawnPanel } | null = null;

/** A panel photographed twice running is drawn once. */
function drawn(spec: PanelSpec): DrawnPanel {
  if (last?.spec !== spec) last = { spec, panel: drawPanel(spec, { pxPerMm: 6.5 }) };
  return last.panel;
}

/**
 * Draws a panel, photographs it with light, noise, tilt and compression of their own (all from
 * `seed`), and squares the photo up as the product does.
 */
export async function photographed(spec: PanelSpec, seed: number): Promise<PanelPhoto> {
  const { image, truth } = drawn(spec);
  const { widthMm, heightMm } = truth;
  const random = createRandom(seed);
  const [widthPx, heightPx] = [Math.round(1.06 * image.width), Math.round(1.14 * image.height)];
  const cornersPx = aimCamera({
    ...{ panelWidthMm: widthMm, panelHeightMm: heightMm, widthPx, heightPx, fill: 0.95 },
    yawDeg: random.uniform(-4, 4),
    pitchDeg: random.uniform(-4, 4),
    rollDeg: random.uniform(-0.6, 0.6),
  });
  const photo = photograph(image, {
    ...{ widthPx, heightPx, cornersPx, vignette: 0.1, blurPx: 0.7, readNoise: 0.002, seed },
    lightAcross: random.uniform(-0.2, 0.2),
    lightDown: random.uniform(-0.12, 0.12),
    exposure: random.uniform(0.85, 1),
    fullWell: random.uniform(4000, 9000),
  });
  const seen = await compressed(photo.image, random.integer(12) + 80);
  const work = { vision: loadOpenCv, progress: () => {} };
  return rectify(seen, { kind: 'size', widthMm, heightMm, cornersPx }, work);
}
