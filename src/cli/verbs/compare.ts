import type { Command } from '@commander-js/extra-typings';
import { SeamgrainError } from '../../core/errors.js';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { Candidate } from '../../core/pipeline/comparePanels.js';
import type { Progress } from '../../core/progress.js';
import { runJob } from '../../job/runJob.js';
import { describeCompare } from '../../report/compare/describeCompare.js';
import { loadOpenCv } from '../../vision/node/loadOpenCv.js';
import { loadPanel } from '../io/loadPanel.js';
import { printAnswer } from '../io/printAnswer.js';
import { withProgress } from '../io/withProgress.js';
import { writeOutput } from '../io/writeOutput.js';
import { addOutputOptions } from '../options/addOutputOptions.js';
import { addPhotoOptions } from '../options/addPhotoOptions.js';
import { addUnitsOptions } from '../options/addUnitsOptions.js';
import { lengthUnitsOf } from '../options/lengthUnitsOf.js';
import { compareFiles } from './compareFiles.js';
import { addCompareOptions, type CompareFlags, compareOptionsOf } from './compareInput.js';
import { imaginedWoods } from './forecastInput.js';
import type { Verb } from './verb.js';

/** `compare PHOTO…`: which candidate loses least to the saw. */
export const addCompareVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('compare')
    .description('Rank candidate panels by what a front or a rip taken out of them would show.');
  verb.argument('[photos...]', 'photos of the uncut candidates, all of one scale');
  addOutputOptions(addUnitsOptions(addPhotoOptions(verb)));
  addCompareOptions(verb);
  verb.action(async () => {
    const flags = verb.opts() as CompareFlags;
    const units = lengthUnitsOf(flags);
    const options = compareOptionsOf(flags);
    const { result, written } = await withProgress(io, async (progress) => {
      const candidates = [...(await photographed(verb.args, flags, progress)), ...imagined(flags)];
      if (candidates.length === 0) throw nothing();
      const work = { vision: loadOpenCv, progress };
      const result = await runJob('compare', { candidates, options }, work);
      if (!flags.out) return { result, written: [] };
      const files = await compareFiles(candidates, result, units);
      return { result, written: await writeOutput(flags.out, files) };
    });
    printAnswer(io, flags.json, result, () => [
      ...describeCompare(result, units),
      ...(written.length ? ['', `Written: ${written.join(', ')}`] : []),
    ]);
  });
};

async function photographed(
  names: readonly string[],
  flags: CompareFlags,
  progress: Progress,
): Promise<Candidate[]> {
  const ends = flags.end ?? [];
  const stray = ends.find(({ face }) => !names.includes(face));
  if (stray) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${stray.face}' is none of the candidates.`,
      'Name the candidate as it stands among the photos: --end board.jpg=end.jpg.',
    );
  }
  const candidates: Candidate[] = [];
  for (const [k, name] of names.entries()) {
    progress((0.3 * k) / names.length, `reading ${name}`);
    const photo = await loadPanel(name, flags, () => {});
    const end = ends.find(({ face }) => face === name)?.end;
    candidates.push({ name, photo, end: end ? await loadEnd(end, flags) : null });
  }
  return candidates;
}

async function loadEnd(path: string, { endSize }: CompareFlags): Promise<PanelPhoto> {
  if (endSize) return loadPanel(path, { size: endSize }, () => {});
  throw new SeamgrainError(
    'wrongUsage',
    'The size of the ends is missing.',
    "Add --end-size with the board's width and thickness: 8inx1in.",
  );
}

/** Boards that are not there: of the size that `--size` gives. */
function imagined(flags: CompareFlags): Candidate[] {
  const woods = imaginedWoods(flags);
  if (woods.length === 0) return [];
  if (!flags.size) {
    throw new SeamgrainError(
      'wrongUsage',
      'An imagined board has no size.',
      'Add --size LENGTHxLENGTH, the size of every candidate.',
    );
  }
  const size = flags.size;
  return woods.map((wood) => ({
    name: `imagined, rings at ${wood.ringAngleDeg} degrees`,
    photo: { wood, ...size },
    end: null,
  }));
}

const nothing = () =>
  new SeamgrainError(
    'wrongUsage',
    'There is nothing to compare.',
    'Give photos of the candidates, or --imagine ANGLE and --size LENGTHxLENGTH for drawn ones.',
  );
