import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { ForecastResult } from '../../core/results/forecastResult.js';
import { reglueOfForecast } from '../../core/rip/reglueOfForecast.js';
import { forecastHtml } from '../../report/forecast/forecastHtml.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { panelDataUrl } from '../images/panelDataUrl.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { jobs } from '../worker/jobs.js';
import { makeDrawable } from '../worker/photoHands.js';

const thumbnailPx = 560;

/** The forecast as one self-contained page, with the face glued up again for each place. */
export async function forecastReport(
  result: ForecastResult,
  { panel, drawable }: PanelOnShelf,
  title: string,
  units: LengthUnits,
): Promise<string> {
  const photoHref = await panelDataUrl(drawable);
  const reglued = await regluedUrl(panel, result, 1);
  const placementHrefs: string[] = [];
  for (const { rank } of result.placements) {
    const href = await regluedUrl(panel, result, rank, thumbnailPx);
    if (href) placementHrefs.push(href);
  }
  return forecastHtml(result, {
    ...units,
    title,
    photoHref,
    placementHrefs,
    ...(reglued ? { regluedHref: reglued } : {}),
  });
}

async function regluedUrl(
  photo: PanelPhoto,
  result: ForecastResult,
  rank: number,
  widest?: number,
): Promise<string | null> {
  const spec = reglueOfForecast(result, { rank });
  if (!spec) return null;
  const image = await jobs.start('reglue', { photo, spec }).result;
  return panelDataUrl(await makeDrawable(image), widest);
}
