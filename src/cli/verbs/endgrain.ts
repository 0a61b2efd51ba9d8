import type { HandPlaced } from '../../core/board/endGrain/handPlaced.js';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { runJob } from '../../job/runJob.js';
import { describeEndgrain } from '../../report/endgrain/describeEndgrain.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { photoToPanel } from '../../vision/photoToPanel.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { readPhoto } from '../io/readPhoto.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { parsePith } from '../options/parsePith.js';
import { parseTangent, type TangentPx } from '../options/parseTangent.js';
import { type PhotoOptions, photoScaleOf } from '../options/photoScaleOf.js';
import { endgrainFiles } from './endgrainFiles.js';
import type { Verb } from './verb.js';

/** `endgrain PHOTO`: how a board was sawn, from its end. */
export const addEndgrainVerb: Verb = (program, io) => {
  const verb = program
    .command('endgrain')
    .description('Read the pith, ring angle and cut of a board from a photo of its end.')
    .argument('<photo>', "photo of the board's end, the wide face from left to right");
  return addOutputOptions(addUnitsOptions(addPhotoOptions(verb)))
    .option(
      '--tangent <LINE>',
      'a line laid along a ring, "x1,y1 x2,y2" in photo pixels, for an end too rough to read; may be repeated',
      parseTangent,
    )
    .option('--pith <PLACE>', 'the pith placed by hand, "x,y" in photo pixels', parsePith)
    .option('--species <NAME>', 'wood of the board: says how far it cups')
    .option('--out <DIR>', 'write the end, picture, report and numbers there')
    .action(async (photo, options) => {
      const { result, written } = await withProgress(io, async (progress) => {
        const panel = await loadPanel(photo, options, progress);
        const placed = await placedOn(panel, photo, options);
        const input = {
          photo: panel,
          options: {
            ...(placed && { placed }),
            ...(options.species !== undefined && { species: options.species }),
          },
        };
        const result = await runJob('endgrain', input, { vision: loadOpenCv, progress });
        if (!options.out) return { result, written: [] };
        const files = await endgrainFiles(panel, result, lengthUnitsOf(options));
        return { result, written: await writeOutput(options.out, files) };
      });
      printAnswer(io, options.json, result, () => {
        const { headline, lines } = describeEndgrain(result, lengthUnitsOf(options));
        return [
          headline,
          '',
          ...lines,
          ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
        ];
      });
    });
};

/** Marks in photo pixels as they lie on the squared-up end; null when none was given. */
async function placedOn(
  panel: PanelPhoto,
  path: string,
  options: PhotoOptions & {
    readonly tangent?: readonly TangentPx[] | undefined;
    readonly pith?: PointPx | undefined;
  },
): Promise<HandPlaced | null> {
  const { tangent = [], pith } = options;
  if (tangent.length === 0 && !pith) return null;
  const { image } = await readPhoto(path);
  const onPanel = (place: PointPx) => photoToPanel(place, image, panel, photoScaleOf(options));
  return {
    tangents: tangent.map(([from, to]) => {
      const [a, b] = [onPanel(from), onPanel(to)];
      return { x1Mm: a.xMm, y1Mm: a.yMm, x2Mm: b.xMm, y2Mm: b.yMm };
    }),
    pith: pith ? onPanel(pith) : null,
  };
}
