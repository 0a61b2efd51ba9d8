import type { BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import { SeamgrainError } from '../../core/errors.js';
import type { Progress } from '../../core/progress.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { runJob } from '../../job/runJob.js';
import { describeArrange } from '../../report/arrange/describeArrange.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { parseDistance } from '../options/parseDistance.js';
import type { PhotoOptions } from '../options/photoScaleOf.js';
import type { Verb } from './verb.js';

/** `arrange PHOTO…`: order and way round of boards for a panel. */
export const addArrangeVerb: Verb = (program, io) => {
  const verb = program
    .command('arrange')
    .description('Find the order and way round of boards in which their joints show least.')
    .argument('<photos...>', 'photos cropped to each board; both faces of one as A.jpg+B.jpg');
  return addOutputOptions(addPhotoOptions(verb))
    .option('--joint <LENGTH>', 'what jointing takes from each edge (default 0mm)', lengthOf)
    .option('--spare <LENGTH>', 'length each board has to slide (default 0mm)', lengthOf)
    .option('--distance <LENGTH>', 'viewing distance (default 600mm)', parseDistance)
    .option('--out <DIR>', 'write the numbers there')
    .action(async (photos, options) => {
      const { result, written } = await withProgress(io, async (progress) => {
        const boards = await loadBoards(photos, options, progress);
        const input = {
          boards,
          options: {
            distanceMm: options.distance ?? 600,
            jointMm: options.joint ?? 0,
            spareMm: options.spare ?? 0,
            useColour: true,
          },
        };
        const result = await runJob('arrange', input, { vision: loadOpenCv, progress });
        if (!options.out) return { result, written: [] };
        const files = [{ name: 'arrange.json', data: `${JSON.stringify(result, null, 2)}\n` }];
        return { result, written: await writeOutput(options.out, files) };
      });
      printAnswer(io, options.json, result, () => [
        ...describeArrange(result),
        ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
      ]);
    });
};

const lengthOf = (text: string) => parseLengthMm(text);

/** Every board's one or two faces, each squared up by the same scale option. */
async function loadBoards(
  photos: readonly string[],
  options: PhotoOptions,
  progress: Progress,
): Promise<BoardPhotos[]> {
  const boards: BoardPhotos[] = [];
  for (const [k, text] of photos.entries()) {
    const [nameA, nameB, ...more] = text.split('+');
    if (!nameA || more.length > 0) {
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
