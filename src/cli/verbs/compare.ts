import type { Candidate } from '../../core/pipeline/comparePanels.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { runJob } from '../../job/runJob.js';
import { describeCompare } from '../../report/arrange/describeCompare.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { parseDistance } from '../options/parseDistance.js';
import { parseKerf } from '../options/parseKerf.js';
import type { Verb } from './verb.js';

/** `compare PHOTO…`: which candidate loses least to the saw. */
export const addCompareVerb: Verb = (program, io) => {
  const verb = program
    .command('compare')
    .description('Rank candidate panels by what a rip through them would show.')
    .argument('<photos...>', 'photos of the uncut candidates, all of one scale');
  return addOutputOptions(addUnitsOptions(addPhotoOptions(verb)))
    .option('--distance <LENGTH>', 'viewing distance (default 600mm)', parseDistance)
    .option('--kerf <LENGTH>', 'width of the saw cut (default 1/8in)', parseKerf)
    .option('--dress <LENGTH>', 'dressed off each jointed edge (default 0mm)', lengthOf)
    .action(async (photos, options) => {
      const result = await withProgress(io, async (progress) => {
        const candidates: Candidate[] = [];
        for (const [k, name] of photos.entries()) {
          progress((0.3 * k) / photos.length, `reading ${name}`);
          candidates.push({ name, photo: await loadPanel(name, options, () => {}) });
        }
        const input = {
          candidates,
          options: {
            distanceMm: options.distance ?? 600,
            kerfMm: options.kerf ?? 3.175,
            dressMm: options.dress ?? 0,
          },
        };
        return runJob('compare', input, { vision: loadOpenCv, progress });
      });
      printAnswer(io, options.json, result, () => describeCompare(result, lengthUnitsOf(options)));
    });
};

const lengthOf = (text: string) => parseLengthMm(text);
