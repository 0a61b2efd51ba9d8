import type { BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { arrangeHtml } from '../../report/arrange/arrangeHtml.js';
import { arrangePicture } from '../../report/arrange/arrangePicture.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { panelHref } from '../io/panelHref.js';
import { rasterise } from '../io/rasterise.js';
import type { OutputFile } from '../io/writeOutput.js';

/** What `arrange --out` writes: the arranged panel (SVG and PNG), the page and the numbers. */
export async function arrangeFiles(
  boards: readonly BoardPhotos[],
  result: ArrangeResult,
  options: LengthUnits & { readonly distanceMm: number; readonly jointMm: number },
): Promise<OutputFile[]> {
  const photoHrefs: string[] = [];
  for (const { board, face } of result.order) {
    const { faceA, faceB } = boards[board - 1]!;
    photoHrefs.push(await panelHref((face === 'B' && faceB ? faceB : faceA).photo));
  }
  const { svg } = arrangePicture(result, { ...options, photoHrefs });
  return [
    { name: 'arranged.svg', data: svg },
    { name: 'arranged.png', data: await rasterise(svg) },
    { name: 'report.html', data: arrangeHtml(result, { ...options, photoHrefs }) },
    { name: 'arrange.json', data: `${JSON.stringify(result, null, 2)}\n` },
  ];
}
