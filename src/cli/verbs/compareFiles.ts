import sharp from 'sharp';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { Candidate } from '../../core/pipeline/comparePanels.js';
import type { CompareResult } from '../../core/results/compareResult.js';
import { runJob } from '../../job/runJob.js';
import { compareHtml } from '../../report/compare/compareHtml.js';
import { comparePicture } from '../../report/compare/comparePicture.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { panelHref } from '../io/panelHref.js';
import { rasterise } from '../io/rasterise.js';
import type { OutputFile } from '../io/writeOutput.js';

/** What `compare --out` writes: the picture strip (SVG and PNG), the page and the numbers. */
export async function compareFiles(
  candidates: readonly Candidate[],
  result: CompareResult,
  units: LengthUnits,
): Promise<OutputFile[]> {
  const photoHrefs: string[] = [];
  const smallHrefs: string[] = [];
  for (const { photo: name } of result.candidates) {
    const face = candidates.find((candidate) => candidate.name === name)!.photo;
    const photo = 'wood' in face ? await runJob('imagine', face, { vision: loadOpenCv }) : face;
    photoHrefs.push(await panelHref(photo));
    smallHrefs.push(await smallHref(photo));
  }
  const { svg } = comparePicture(result, { ...units, photoHrefs });
  return [
    { name: 'candidates.svg', data: svg },
    { name: 'candidates.png', data: await rasterise(svg) },
    { name: 'report.html', data: compareHtml(result, { ...units, photoHrefs, smallHrefs }) },
    { name: 'compare.json', data: `${JSON.stringify(result, null, 2)}\n` },
  ];
}

async function smallHref({ image }: PanelPhoto): Promise<string> {
  const { width, height, data } = image;
  const jpeg = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize({ width: 560, withoutEnlargement: true })
    .jpeg({ quality: 86 })
    .toBuffer();
  return `data:image/jpeg;base64,${jpeg.toString('base64')}`;
}
