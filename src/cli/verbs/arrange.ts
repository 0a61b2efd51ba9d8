import { type Command, Option } from '@commander-js/extra-typings';
import type { BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import { SeamgrainError } from '../../core/errors.js';
import type { Progress } from '../../core/progress.js';
import { runJob } from '../../job/runJob.js';
import { describeArrange } from '../../report/arrange/describeArrange.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { arrangeOptions } from '../options/arrangeOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import type { PhotoOptions } from '../options/photoScaleOf.js';
import { arrangeFiles } from './arrangeFiles.js';
import { type ArrangeFlags, arrangeInput } from './arrangeInput.js';
import type { Verb } from './verb.js';

/** `arrange PHOTO…`: order and way round of boards for a panel. */
export const addArrangeVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('arrange')
    .description('Find the order and way round of boards in which their joints show least.');
  verb.argument('<photos...>', 'photos cropped to each board; both faces of one as A.jpg+B.jpg');
  addOutputOptions(addUnitsOptions(addPhotoOptions(verb)));
  for (const option of arrangeOptions()) verb.addOption(option);
  verb.addOption(new Option('--out <DIR>', 'write pictures, report and numbers there'));
  verb.action(async () => {
    const flags = verb.opts() as ArrangeFlags;
    const units = lengthUnitsOf(flags);
    const { result, written } = await withProgress(io, async (progress) => {
      const boards = await loadBoards(verb.args, flags, progress);
      const input = arrangeInput(flags, boards);
      const result = await runJob('arrange', input, { vision: loadOpenCv, progress });
      if (!flags.out) return { result, written: [] };
      const { distanceMm, jointMm } = input.options;
      const files = await arrangeFiles(input.boards, result, { ...units, distanceMm, jointMm });
      return { result, written: await writeOutput(flags.out, files) };
    });
    printAnswer(io, flags.json, result, () => [
      ...describeArrange(result, units),
      ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
    ]);
  });
};

/** Every board's one or two faces, each squared up by the same scale option. */
async function loadBoards(
  photos: readonly string[],
  options: PhotoOptions,
  progress: Progress,
): Promise<BoardPhotos[]> {
  const boards: BoardPhotos[] = [];
  for (const [k, text] of photos.entries()) {
    const [nameA, nameB, ...more] = text.split('+');
    if (!nameA || nameB === '' || more.length > 0) {
      throw new SeamgrainError(
        'wrongUsage',
        `'${text}' is no board.`,
        'Give one photo, or two faces of one board as A.jpg+B.jpg.',
      );
    }
    progress((0.4 * k) / photos.length, `reading board ${k + 1}`);
    const face = async (name: string) => ({
      name,
      photo: await loadPanel(name, options, () => {}),
    });
    boards.push({ faceA: await face(nameA), faceB: nameB ? await face(nameB) : null });
  }
  return boards;
}
