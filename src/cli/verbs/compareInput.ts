import { type Command, Option } from '@commander-js/extra-typings';
import { SeamgrainError } from '../../core/errors.js';
import type { CompareOptions } from '../../core/pipeline/comparePanels.js';
import type { EndSide } from '../../core/pipeline/ringsAtFront.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parseSizeMm, type SizeMm } from '../../core/units/parseSizeMm.js';
import type { AnswerFlags } from '../options/answerFlags.js';
import { type CutFlags, cutOptions } from '../options/cutOptions.js';
import { type GapOptions, gapInputOf } from '../options/gapInputOf.js';
import { gapOptions } from '../options/gapOptions.js';
import { type ImagineFlags, imagineOptions } from '../options/imagineOptions.js';
import { manyOption } from '../options/manyOption.js';
import type { PhotoOptions } from '../options/photoScaleOf.js';
import { typedOption } from '../options/typedOption.js';

/** The flags of `compare`, read. */
export interface CompareFlags
  extends PhotoOptions,
    CutFlags,
    ImagineFlags,
    AnswerFlags,
    Omit<GapOptions, 'ringAngle'> {
  readonly front?: SizeMm;
  readonly end?: readonly { readonly face: string; readonly end: string }[];
  readonly endSize?: SizeMm;
  readonly endsFrom?: EndSide;
  readonly across?: number;
}

/** Of the season's options, those that a comparison takes: the rings come from the candidates. */
const seasonOptions = ['--species', '--shrinkage', '--from', '--to', '--mc-from', '--mc-to'];

/** Adds everything that a comparison depends on besides the photos. */
export function addCompareOptions(verb: Command): void {
  const options: Option[] = [
    ...cutOptions(),
    typedOption('--front <LENGTHxLENGTH>', 'rank by the best place for this front', parseSizeMm),
    manyOption(
      '--end <FACE=PHOTO>',
      "a candidate's end grain, board.jpg=end.jpg; again for others",
      parseEnd,
    ),
    typedOption(
      '--end-size <LENGTHxLENGTH>',
      'real size of the ends in their photos: width x thickness',
      parseSizeMm,
    ),
    new Option(
      '--ends-from <SIDE>',
      "which end of the boards the end photos show, the candidate's face up (default left)",
    ).choices(['left', 'right']),
    ...gapOptions().filter(({ long }) => seasonOptions.includes(long ?? '')),
    typedOption(
      '--across <LENGTH>',
      "the front's size across the grain, for its seasonal gap (default: the front's)",
      parseLengthMm,
    ),
    ...imagineOptions(),
    new Option('--out <DIR>', 'write pictures, report and numbers there'),
  ];
  for (const option of options) verb.addOption(option);
}

/** What the flags ask. */
export function compareOptionsOf(flags: CompareFlags): CompareOptions {
  const { species, shrinkage, from, to, mcFrom, mcTo } = flags;
  const isAsked = [species, shrinkage, from, to, mcFrom, mcTo].some((one) => one !== undefined);
  const acrossMm = flags.across ?? flags.front?.heightMm;
  if (isAsked && acrossMm === undefined) {
    throw new SeamgrainError(
      'wrongUsage',
      'A gap needs the size of the front.',
      'Add --front LENGTHxLENGTH, or --across LENGTH.',
    );
  }
  return {
    distanceMm: flags.distance ?? 600,
    kerfMm: flags.kerf ?? 3.175,
    dressMm: flags.dress ?? 0,
    front: flags.front ?? null,
    endSide: flags.endsFrom ?? 'left',
    gap: isAsked && acrossMm !== undefined ? gapInputOf(flags, acrossMm) : null,
  };
}

function parseEnd(text: string): { readonly face: string; readonly end: string } {
  const [face, end, ...more] = text.split('=');
  if (face && end && more.length === 0) return { face, end };
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' does not say whose end it is.`,
    "Give the candidate's photo and the photo of its end: board.jpg=end.jpg.",
  );
}
