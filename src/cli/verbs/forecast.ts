import { type Command, Option } from '@commander-js/extra-typings';
import { SeamgrainError } from '../../core/errors.js';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { ImaginedWood } from '../../core/pipeline/forecastOptions.js';
import type { Progress } from '../../core/progress.js';
import { runJob } from '../../job/runJob.js';
import { describeForecast } from '../../report/forecast/describeForecast.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { forecastFiles } from './forecastFiles.js';
import { type ForecastFlags, forecastFlags } from './forecastFlags.js';
import { forecastInput, imaginedWoods } from './forecastInput.js';
import type { Verb } from './verb.js';

/** `forecast PHOTO`: what each cut through an uncut panel would cost, before the saw starts. */
export const addForecastVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('forecast')
    .description(
      'Say what a rip through an uncut panel would show, and where a drawer front is best taken from.',
    );
  verb.argument(
    '[photo]',
    'photo of the uncut panel; without one, --imagine and --size draw a face',
  );
  addOutputOptions(addUnitsOptions(addPhotoOptions(verb)));
  for (const option of forecastFlags()) verb.addOption(option);
  verb.addOption(new Option('--out <DIR>', 'write pictures, report and numbers there'));
  verb.action(async () => {
    const flags = verb.opts() as ForecastFlags;
    const [path] = verb.args;
    const { result, written } = await withProgress(io, async (progress) => {
      const woods = imaginedWoods(flags);
      const photo = path
        ? await loadPanel(path, flags, progress)
        : await imaginedPanel(flags, woods[0], progress);
      const options = forecastInput(flags, path ? woods : woods.slice(1));
      const work = { vision: loadOpenCv, progress };
      const result = await runJob('forecast', { photo, options }, work);
      if (!flags.out) return { result, written: [] };
      const files = await forecastFiles(photo, result, lengthUnitsOf(flags));
      return { result, written: await writeOutput(flags.out, files) };
    });
    printAnswer(io, flags.json, result, () => {
      const { headline, lines } = describeForecast(result, lengthUnitsOf(flags));
      return [
        headline,
        '',
        ...lines,
        ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
      ];
    });
  });
};

/** The first imagined wood takes the photo's place; `--size` says how large the face is. */
async function imaginedPanel(
  { size }: ForecastFlags,
  wood: ImaginedWood | undefined,
  progress: Progress,
): Promise<PanelPhoto> {
  if (!wood || !size) {
    throw new SeamgrainError(
      'wrongUsage',
      'There is nothing to forecast.',
      'Give a photo of the uncut panel, or --imagine ANGLE and --size LENGTHxLENGTH for a drawn face.',
    );
  }
  return runJob('imagine', { wood, ...size }, { vision: loadOpenCv, progress });
}
