import { runJob } from '../../job/runJob.js';
import { describeEndgrain } from '../../report/arrange/describeEndgrain.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import type { Verb } from './verb.js';

/** `endgrain PHOTO`: how a board was sawn, from its end. */
export const addEndgrainVerb: Verb = (program, io) => {
  const verb = program
    .command('endgrain')
    .description('Read the pith, ring angle and cut of a board from a photo of its end.')
    .argument('<photo>', "photo of the board's end, the wide face from left to right");
  return addOutputOptions(addPhotoOptions(verb)).action(async (photo, options) => {
    const result = await withProgress(io, async (progress) => {
      const panel = await loadPanel(photo, options, progress);
      return runJob('endgrain', { photo: panel }, { vision: loadOpenCv, progress });
    });
    printAnswer(io, options.json, result, () => describeEndgrain(result));
  });
};
