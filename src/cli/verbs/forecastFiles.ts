import sharp from 'sharp';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { RgbImage } from '../../core/image/rgbImage.js';
import type { ForecastResult } from '../../core/results/forecastResult.js';
import { reglueOfForecast } from '../../core/rip/reglueOfForecast.js';
import { runJob } from '../../job/runJob.js';
import { forecastHtml } from '../../report/forecast/forecastHtml.js';
import { forecastPicture } from '../../report/forecast/forecastPicture.js';
import { regluedScore } from '../../report/forecast/regluedScore.js';
import { scorePicture } from '../../report/score/scorePicture.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { encodePng } from '../io/encodePng.js';
import { panelHref } from '../io/panelHref.js';
import { rasterise } from '../io/rasterise.js';
import type { OutputFile } from '../io/writeOutput.js';

/** What `forecast --out` writes: the panel, the re-glued face, pictures, the page and the numbers. */
export async function forecastFiles(
  panel: PanelPhoto,
  result: ForecastResult,
  units: LengthUnits,
): Promise<OutputFile[]> {
  const photoHref = await panelHref(panel);
  const picture = forecastPicture(result, { ...units, photoHref });
  const reglued = await regluedImage(panel, result, 1);
  const pages = { ...units, photoHref };
  const files: OutputFile[] = [
    { name: 'panel.png', data: await encodePng(panel.image, panel.pxPerMm) },
    { name: 'forecast.svg', data: picture.svg },
    { name: 'forecast.png', data: await rasterise(picture.svg) },
    { name: 'forecast.json', data: `${JSON.stringify(result, null, 2)}\n` },
  ];
  const score = regluedScore(result);
  if (!reglued || !score) {
    return [...files, { name: 'report.html', data: forecastHtml(result, pages) }];
  }
  const regluedHref = await panelHref({ ...panel, image: reglued });
  const marked = scorePicture(score, {
    ...{ ...units, photoHref: regluedHref, distanceMm: result.distanceMm, headline: false },
    idPrefix: 'reglued',
  });
  const html = forecastHtml(result, {
    ...pages,
    regluedHref,
    afterHref: await panelHref({ ...panel, image: await centred(reglued, panel.image) }),
    placementHrefs: await thumbnails(panel, result),
  });
  return [
    ...files,
    { name: 'reglued.png', data: await encodePng(reglued, panel.pxPerMm) },
    { name: 'reglued-marked.png', data: await rasterise(marked.svg) },
    { name: 'report.html', data: html },
  ];
}

async function regluedImage(
  photo: PanelPhoto,
  result: ForecastResult,
  rank: number,
): Promise<RgbImage | null> {
  const spec = reglueOfForecast(result, { rank });
  if (!spec) return null;
  return runJob('reglue', { photo, spec }, { vision: loadOpenCv });
}

/** The smaller picture in the middle of a canvas of the larger one's size, on neutral grey. */
async function centred(image: RgbImage, on: RgbImage): Promise<RgbImage> {
  const { width, height, data } = image;
  const [left, top] = [
    Math.max(0, (on.width - width) >> 1),
    Math.max(0, (on.height - height) >> 1),
  ];
  const { data: out, info } = await sharp(data, { raw: { width, height, channels: 3 } })
    .extend({
      ...{ left, right: Math.max(0, on.width - width - left) },
      ...{ top, bottom: Math.max(0, on.height - height - top), background: '#b9b9bb' },
    })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: out };
}

/** Each placement glued up again, small. */
async function thumbnails(panel: PanelPhoto, result: ForecastResult): Promise<string[]> {
  const hrefs: string[] = [];
  for (const { rank } of result.placements) {
    const image = await regluedImage(panel, result, rank);
    if (!image) continue;
    const { width, height, data } = image;
    const jpeg = await sharp(data, { raw: { width, height, channels: 3 } })
      .resize({ width: 560, withoutEnlargement: true })
      .jpeg({ quality: 86 })
      .toBuffer();
    hrefs.push(`data:image/jpeg;base64,${jpeg.toString('base64')}`);
  }
  return hrefs;
}
