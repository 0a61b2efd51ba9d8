import { SeamgrainError } from '../../core/errors.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { runJob } from '../../job/runJob.js';
import { describeFaceRings } from '../../report/endgrain/describeFaceRings.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { encodePng } from '../io/encodePng.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { grainWords } from './grainWords.js';
import type { Verb } from './verb.js';

const defaultCellMm = 10;

/** `grain PHOTO`: the grain field itself. */
export const addGrainVerb: Verb = (program, io) => {
  const verb = program
    .command('grain')
    .description(
      'Measure which way the grain runs and how far apart its lines are, over the panel.',
    )
    .argument('<photo>', 'photo of the panel: JPEG, PNG, WebP, TIFF or AVIF');
  return addOutputOptions(addUnitsOptions(addPhotoOptions(verb)))
    .option('--cell <LENGTH>', 'side of a cell of the grid (default 10mm)', parseCell)
    .option('--ring-angle', 'estimate how the rings stand to this face (one board, lengthwise)')
    .option('--out <DIR>', 'write the panel and the numbers there')
    .action(async (photo, options) => {
      const { result, written } = await withProgress(io, async (progress) => {
        const panel = await loadPanel(photo, options, progress);
        const input = {
          photo: panel,
          options: { cellMm: options.cell ?? defaultCellMm, ringAngle: options.ringAngle ?? false },
        };
        const result = await runJob('grain', input, { vision: loadOpenCv, progress });
        if (!options.out) return { result, written: [] };
        const files = [
          { name: 'panel.png', data: await encodePng(panel.image, panel.pxPerMm) },
          { name: 'grain.json', data: `${JSON.stringify(result, null, 2)}\n` },
        ];
        return { result, written: await writeOutput(options.out, files) };
      });
      printAnswer(io, options.json, result, () => [
        ...grainWords(result, lengthUnitsOf(options)),
        ...describeFaceRings(result.ringAngleFromFace, lengthUnitsOf(options)),
        ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
      ]);
    });
};

/** Reads `--cell`: 2 mm to 100 mm. */
function parseCell(text: string): number {
  const mm = parseLengthMm(text);
  if (mm >= 2 && mm <= 100) return mm;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is no cell size.`,
    'Give 2mm to 100mm; 10mm is usual.',
  );
}
