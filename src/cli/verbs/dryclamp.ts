import { Option } from '@commander-js/extra-typings';
import { linearLuminancePlane } from '../../core/colour/linearLuminancePlane.js';
import { SeamgrainError } from '../../core/errors.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { type JointSide, judgeDryJoint } from '../../core/shop/joint/judgeDryJoint.js';
import { measureJointGap } from '../../core/shop/joint/measureJointGap.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { printAnswer } from '../io/printAnswer.js';
import { readPhoto } from '../io/readPhoto.js';
import { parseJointEnds } from '../options/parseJointEnds.js';
import { parseKnown } from '../options/parseKnown.js';
import { parsePositive } from '../options/parsePositive.js';
import { typedOption } from '../options/typedOption.js';
import type { Verb } from './verb.js';

interface DryClampOptions {
  readonly joint: readonly [PointPx, PointPx];
  readonly pxPerMm?: number;
  readonly known?: ReturnType<typeof parseKnown>;
  readonly railSpare?: number;
  readonly stripSpare?: number;
  readonly paper?: number;
  readonly json?: true;
}

/** `dryclamp PHOTO`: the gap of a dry-clamped joint against a slip of paper. */
export const addDryClampVerb: Verb = (program, io) => {
  const verb = program
    .command('dryclamp')
    .description(
      'Does this dry-clamped joint close? The gap along it, from a close square-on photo.',
    )
    .argument('<photo>', 'close photo of the joint, 20 px/mm or more, straight on');
  const options: Option[] = [
    typedOption(
      '--joint <PLACES>',
      'both ends of the joint in photo pixels, "x,y x,y"',
      parseJointEnds,
    ).makeOptionMandatory(),
    typedOption('--px-per-mm <NUMBER>', 'photo pixels per millimetre', parsePositive),
    typedOption('--known <DISTANCE>', 'or one known distance, "x,y x,y LENGTH"', parseKnown),
    typedOption('--rail-spare <LENGTH>', 'width that the rail may lose', parseLengthMm),
    typedOption('--strip-spare <LENGTH>', 'width that the strip may lose', parseLengthMm),
    typedOption(
      '--paper <LENGTH>',
      'thickness of your slip of paper (default 0.1mm)',
      parseLengthMm,
    ),
    new Option('--json', 'print one JSON document on stdout and nothing else there'),
    new Option('--debug', 'show where in the program a failure came from'),
  ];
  for (const option of options) verb.addOption(option);
  verb.action(async (photo) => {
    const given = verb.opts() as unknown as DryClampOptions;
    const pxPerMm = scaleOf(given);
    const { image, notes } = await readPhoto(photo);
    const [from, to] = given.joint;
    const line = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
    const measured = measureJointGap(linearLuminancePlane(image), line, pxPerMm);
    const sides: [JointSide, JointSide] = [
      { name: 'rail', spareMm: given.railSpare ?? null },
      { name: 'strip', spareMm: given.stripSpare ?? null, isStrip: true },
    ];
    const judged = judgeDryJoint({
      ...measured,
      sides,
      pxPerMm,
      ...(given.paper !== undefined && { paperMm: given.paper }),
    });
    const result = { ...judged, notes: [...notes, ...judged.notes] };
    printAnswer(io, given.json, result, () => [...result.words, ...result.notes]);
  });
};

function scaleOf({ pxPerMm, known }: DryClampOptions): number {
  if ((pxPerMm === undefined) === (known === undefined)) {
    throw new SeamgrainError(
      'wrongUsage',
      pxPerMm === undefined ? 'The photo has no scale.' : 'The photo has two scales.',
      'Give --px-per-mm NUMBER or --known "x,y x,y LENGTH".',
    );
  }
  if (pxPerMm !== undefined) return pxPerMm;
  const { fromPx, toPx, lengthMm } = known!;
  return Math.hypot(toPx.x - fromPx.x, toPx.y - fromPx.y) / lengthMm;
}
