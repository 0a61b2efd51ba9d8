import { SeamgrainError } from '../../core/errors.js';
import { defaultScoreOptions } from '../../core/pipeline/scoreOptions.js';
import { runJob } from '../../job/runJob.js';
import { describeScore } from '../../report/words/describeScore.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { parseDistance } from '../options/parseDistance.js';
import { parseKerf } from '../options/parseKerf.js';
import { parseLeaveOut } from '../options/parseLeaveOut.js';
import { parseSeam } from '../options/parseSeam.js';
import { parseSeed } from '../options/parseSeed.js';
import { seamLineOf } from '../options/seamLineOf.js';
import type { Verb } from './verb.js';

/** `score PHOTO`: where the joints of a finished glue-up are and how much each shows. */
export const addScoreVerb: Verb = (program, io) => {
  const verb = program
    .command('score')
    .description('Find the joints of a finished glue-up and say how visible each is.')
    .argument('<photo>', 'photo of the panel: JPEG, PNG, WebP, TIFF or AVIF');
  return addOutputOptions(addUnitsOptions(addPhotoOptions(verb)))
    .option(
      '--seam <SEAM>',
      'place a seam: "y=LENGTH", "x=LENGTH" or "x1,y1 x2,y2"; may be repeated',
      parseSeam,
    )
    .option('--no-find', 'score only the seams placed with --seam')
    .option(
      '--leave-out <AREA>',
      'an area not to measure, "x,y x,y x,y" with units; may be repeated',
      parseLeaveOut,
    )
    .option('--distance <LENGTH>', 'viewing distance (default 600mm)', parseDistance)
    .option('--kerf <LENGTH>', 'width of the saw cut (default 1/8in)', parseKerf)
    .option('--seed <N>', 'seed of the draws that judge chance (default 1)', parseSeed)
    .option('--out <DIR>', 'write the panel, picture, report and numbers there')
    .action(async (photo, options) => {
      if (!options.find && !options.seam) throw nothingToScore();
      const { result, written } = await withProgress(io, async (progress) => {
        // The job's code loads while the photo is decoded; the job itself waits for it.
        // Only ahead of time: should it fail, the job that needs it says so.
        import('../../core/pipeline/scorePanel.js').catch(() => undefined);
        const panel = await loadPanel(photo, options, progress);
        const scoreOptions = {
          ...defaultScoreOptions,
          distanceMm: options.distance ?? defaultScoreOptions.distanceMm,
          kerfMm: options.kerf ?? defaultScoreOptions.kerfMm,
          seed: options.seed ?? defaultScoreOptions.seed,
          find: options.find,
          placedSeams: (options.seam ?? []).map((seam) => seamLineOf(seam, panel)),
          leftOut: options.leaveOut ?? [],
        };
        const work = { vision: loadOpenCv, progress };
        const result = await runJob('score', { photo: panel, options: scoreOptions }, work);
        if (!options.out) return { result, written: [] };
        const { distanceMm } = scoreOptions;
        // Drawing is loaded only when something is to be drawn.
        const { scoreFiles } = await import('./scoreFiles.js');
        const files = await scoreFiles(panel, result, {
          ...lengthUnitsOf(options),
          distanceMm,
        });
        return { result, written: await writeOutput(options.out, files) };
      });
      printAnswer(io, options.json, result, () => {
        const { headline, lines } = describeScore(result, lengthUnitsOf(options));
        return [
          headline,
          '',
          ...lines,
          ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
        ];
      });
    });
};

function nothingToScore(): SeamgrainError {
  return new SeamgrainError(
    'wrongUsage',
    'There is nothing to score: --no-find, and no seam placed.',
    'Place one with --seam "y=LENGTH", or leave --no-find away.',
  );
}
