import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';
import { scoreHtml } from '../../report/html/scoreHtml.js';
import { scoreSvg } from '../../report/score/scoreSvg.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { encodePng } from '../io/encodePng.js';
import { panelHref } from '../io/panelHref.js';
import { rasterise } from '../io/rasterise.js';
import type { OutputFile } from '../io/writeOutput.js';

/** What `score --out` writes: the panel, the picture (SVG and PNG), the page and the numbers. */
export async function scoreFiles(
  panel: PanelPhoto,
  result: ScoreResult,
  options: LengthUnits & { readonly distanceMm: number },
): Promise<OutputFile[]> {
  const drawing = { ...options, photoHref: await panelHref(panel) };
  const svg = scoreSvg(result, drawing);
  return [
    { name: 'panel.png', data: await encodePng(panel.image, panel.pxPerMm) },
    { name: 'score.svg', data: svg },
    { name: 'score.png', data: await rasterise(svg) },
    { name: 'report.html', data: scoreHtml(result, drawing) },
    { name: 'score.json', data: `${JSON.stringify(result, null, 2)}\n` },
  ];
}
