import { type Command, Option } from '@commander-js/extra-typings';
import { computeGap } from '../../core/shop/movement/computeGap.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { describeGap } from '../../report/sheet/describeGap.js';
import { printAnswer } from '../io/printAnswer.js';
import { type GapOptions, gapInputOf } from '../options/gapInputOf.js';
import { gapOptions } from '../options/gapOptions.js';
import { parseDistance } from '../options/parseDistance.js';
import { typedOption } from '../options/typedOption.js';
import type { Verb } from './verb.js';

interface GapVerbOptions extends GapOptions {
  readonly across: number;
  readonly along?: number;
  readonly distance: number;
  readonly json?: true;
}

/** The verb `gap`: seasonal movement of a front in its opening. */
export const addGapVerb: Verb = (program, io) => {
  const verb: Command = program
    .command('gap')
    .description('Seasonal movement of a front across its grain, and the gap to leave.');
  const options: Option[] = [
    typedOption(
      '--across <LENGTH>',
      "the front's size across the grain",
      parseLengthMm,
    ).makeOptionMandatory(),
    typedOption('--along <LENGTH>', "the front's length along the grain", parseLengthMm),
    typedOption('--distance <LENGTH>', 'viewing distance', parseDistance).default(600, '600mm'),
    ...gapOptions(),
    new Option('--json', 'print one JSON document on stdout and nothing else there'),
    new Option('--debug', 'show where in the program a failure came from'),
  ];
  for (const option of options) verb.addOption(option);
  verb.action(() => {
    const given = verb.opts() as GapVerbOptions;
    const gap = computeGap({
      ...gapInputOf(given, given.across),
      distanceMm: given.distance,
      ...(given.along !== undefined && { lengthMm: given.along }),
    });
    printAnswer(io, given.json, gap, () => describeGap(gap));
  });
};
