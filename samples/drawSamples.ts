/**
 * Draws every file in samples/ from the wood model, seed by seed: `npm run samples`.
 * The same script always gives the same pictures and the same truth.
 */
import { writeFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { RgbImage } from '../src/core/image/rgbImage.js';
import { aimCamera } from '../src/core/wood/aimCamera.js';
import { drawEndGrain } from '../src/core/wood/drawEndGrain.js';
import { drawPanel } from '../src/core/wood/drawPanel.js';
import { photograph } from '../src/core/wood/photograph.js';
import { boardSamples, endSample, jointMm } from './boardSamples.js';
import { type PanelSample, panelSamples } from './panelSamples.js';
import { truthOfPanel } from './truthOfPanel.js';

const folder = 'samples';

async function writeJpeg(name: string, { width, height, data }: RgbImage): Promise<void> {
  await sharp(data, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 88 })
    .toFile(`${folder}/${name}.jpg`);
}

async function writeTruth(name: string, truth: object): Promise<void> {
  await writeFile(`${folder}/${name}.truth.json`, `${JSON.stringify(truth, null, 1)}\n`);
}

/** Square-on photo of a whole board or end: a little blur and noise, slightly uneven light. */
function closeUp(image: RgbImage, seed: number): RgbImage {
  const { width, height } = image;
  return photograph(image, {
    widthPx: width,
    heightPx: height,
    cornersPx: [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ],
    lightAcross: 0.1,
    vignette: 0.06,
    blurPx: 0.6,
    fullWell: 9000,
    readNoise: 0.002,
    seed,
  }).image;
}

async function drawPanelSample(sample: PanelSample, seed: number): Promise<void> {
  const { image, truth } = drawPanel(sample.spec, { pxPerMm: sample.pxPerMm });
  const widthPx = Math.round(image.width * 1.08);
  const heightPx = Math.round(image.height * 1.2);
  const { yawDeg, pitchDeg, rollDeg, ...light } = sample.view;
  const cornersPx = aimCamera({
    panelWidthMm: truth.widthMm,
    panelHeightMm: truth.heightMm,
    widthPx,
    heightPx,
    fill: 0.93,
    yawDeg,
    pitchDeg,
    rollDeg,
  });
  const photo = photograph(image, {
    widthPx,
    heightPx,
    cornersPx,
    ...light,
    vignette: 0.12,
    blurPx: 0.7,
    fullWell: 8000,
    readNoise: 0.002,
    exposure: 0.95,
    seed,
  });
  const corners = cornersPx.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  const size = `${Number(truth.widthMm.toFixed(3))}mmx${Number(truth.heightMm.toFixed(3))}mm`;
  const args = [
    sample.verb,
    `${folder}/${sample.name}.jpg`,
    '--size',
    size,
    '--corners',
    corners,
    ...(sample.options ?? []),
  ];
  await writeJpeg(sample.name, photo.image);
  await writeTruth(sample.name, {
    photo: `${sample.name}.jpg`,
    args,
    cornersPx: cornersPx.map(({ x, y }) => [Number(x.toFixed(1)), Number(y.toFixed(1))]),
    panel: truthOfPanel(truth),
  });
}

async function drawBoards(): Promise<void> {
  for (const [index, sample] of boardSamples.entries()) {
    const { image, truth } = drawPanel(sample.spec, { pxPerMm: 4.5 });
    await writeJpeg(sample.name, closeUp(image, 200 + index));
    await writeTruth(sample.name, {
      photo: `${sample.name}.jpg`,
      strip: sample.strip,
      turned: sample.turned,
      jointMm,
      panel: truthOfPanel(truth),
    });
  }
}

async function drawEnd(): Promise<void> {
  const { image, truth } = drawEndGrain(endSample.spec, { pxPerMm: 12 });
  await writeJpeg(endSample.name, closeUp(image, 300));
  await writeTruth(endSample.name, {
    photo: `${endSample.name}.jpg`,
    args: [
      'endgrain',
      `${folder}/${endSample.name}.jpg`,
      '--size',
      `${truth.widthMm}mmx${truth.thicknessMm}mm`,
    ],
    widthMm: truth.widthMm,
    thicknessMm: truth.thicknessMm,
    pith: { xMm: Number(truth.pith.xMm.toFixed(2)), yMm: Number(truth.pith.yMm.toFixed(2)) },
    ringAngle: Array.from({ length: 17 }, (_, i) => {
      const xMm = 4 + 10 * i;
      return { xMm, angleDeg: Number(truth.ringAngleDeg(xMm, 6).toFixed(1)) };
    }),
  });
}

for (const [index, sample] of panelSamples.entries()) await drawPanelSample(sample, 100 + index);
await drawBoards();
await drawEnd();
