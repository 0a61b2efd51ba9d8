import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { endgrainHtml } from '../../report/endgrain/endgrainHtml.js';
import { endgrainPicture } from '../../report/endgrain/endgrainPicture.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { encodePng } from '../io/encodePng.js';
import { panelHref } from '../io/panelHref.js';
import { rasterise } from '../io/rasterise.js';
import type { OutputFile } from '../io/writeOutput.js';

/** What `endgrain --out` writes: the end, the picture (SVG and PNG), the page and the numbers. */
export async function endgrainFiles(
  panel: PanelPhoto,
  result: EndgrainResult,
  units: LengthUnits,
): Promise<OutputFile[]> {
  const drawing = { ...units, photoHref: await panelHref(panel) };
  const { svg } = endgrainPicture(result, drawing);
  return [
    { name: 'end.png', data: await encodePng(panel.image, panel.pxPerMm) },
    { name: 'endgrain.svg', data: svg },
    { name: 'endgrain.png', data: await rasterise(svg) },
    { name: 'report.html', data: endgrainHtml(result, drawing) },
    { name: 'endgrain.json', data: `${JSON.stringify(result, null, 2)}\n` },
  ];
}
