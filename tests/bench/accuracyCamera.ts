import sharp from 'sharp';
import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { aimCamera } from '../../src/core/wood/aimCamera.js';
import { photograph } from '../../src/core/wood/photograph.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';
import { rectify } from '../../src/vision/rectify.js';
import type { BenchPanel } from './accuracyPanels.js';

/**
 * The panel as a phone sees it from aslant under a lamp to one side: perspective, gradient,
 * vignette, soft focus, noise, JPEG; then squared up again by its four corners.
 */
export async function throughCamera({ photo }: BenchPanel, seed: number): Promise<PanelPhoto> {
  const random = createRandom(seed);
  const { widthMm, heightMm } = photo;
  const frame = { widthPx: 3000, heightPx: 1700 };
  const cornersPx = aimCamera({
    ...frame,
    panelWidthMm: widthMm,
    panelHeightMm: heightMm,
    yawDeg: random.uniform(-8, 8),
    pitchDeg: random.uniform(-12, 12),
    rollDeg: random.uniform(-2, 2),
  });
  const shot = photograph(photo.image, {
    ...frame,
    cornersPx,
    lightAcross: random.uniform(-0.4, 0.4),
    lightDown: random.uniform(-0.3, 0.3),
    vignette: 0.2,
    blurPx: 0.8,
    fullWell: 6000,
    readNoise: 0.003,
    seed,
  });
  const size = { width: frame.widthPx, height: frame.heightPx };
  const jpeg = await sharp(shot.image.data, { raw: { ...size, channels: 3 } })
    .jpeg({ quality: 90 })
    .toBuffer();
  const data = await sharp(jpeg).raw().toBuffer();
  const scale = { kind: 'size', widthMm, heightMm, cornersPx: shot.cornersPx } as const;
  return rectify({ ...size, data }, scale, { vision: loadOpenCv });
}
