import { Option } from '@commander-js/extra-typings';
import { parseRuleStep } from '../../core/shop/layout/parseRuleStep.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parsePointMm } from '../../core/units/parsePointMm.js';
import { parseSizeMm } from '../../core/units/parseSizeMm.js';
import { parseAsCut } from './parseAsCut.js';
import { parseCount } from './parseCount.js';
import { parseKerf } from './parseKerf.js';
import { typedOption } from './typedOption.js';

/** Everything that the numbers for the saw depend on. `LayoutOptions` is what they read as. */
export function layoutOptions(): Option[] {
  return [
    typedOption(
      '--panel <LENGTHxLENGTH>',
      'the panel in hand: along the grain x across it',
      parseSizeMm,
    ).makeOptionMandatory(),
    many(
      '--front <LENGTHxLENGTH>',
      'the finished front; again for another one',
      parseSizeMm,
    ).makeOptionMandatory(),
    many(
      '--at <x,y>',
      "the front's upper left corner on the panel; once for each front (default: centred)",
      parsePointMm,
    ),
    typedOption('--kerf <LENGTH>', 'width of the saw cut', parseKerf).default(3.175, '1/8in'),
    typedOption('--dress <LENGTH>', 'taken from each jointed edge', parseLengthMm).default(
      0,
      '0mm',
    ),
    typedOption(
      '--trim <LENGTH>',
      'taken from each edge of the front at fitting',
      parseLengthMm,
    ).default(0, '0mm'),
    typedOption('--trim-ends <LENGTH>', 'the same at its ends (default: as --trim)', parseLengthMm),
    typedOption('--face <LENGTHxLENGTH>', 'the finished face wanted after glue-up', parseSizeMm),
    typedOption('--column <NUMBER>', 'equal fronts below each other', parseCount),
    typedOption('--row <NUMBER>', 'equal fronts beside each other', parseCount),
    typedOption(
      '--between <LENGTH>',
      'finished wood between them; 0in parts them by one cut',
      parseLengthMm,
    ),
    typedOption('--slide-left <LENGTH>', 'the left end moves in at glue-up', parseLengthMm),
    typedOption('--slide-right <LENGTH>', 'the right end moves in at glue-up', parseLengthMm),
    new Option('--edge <EDGE>', 'the jointed edge on the fence').choices(['upper', 'lower']),
    new Option('--stop <END>', 'the squared end at the stop').choices(['left', 'right']),
    typedOption(
      '--rule <STEP>',
      'finest mark you can set: 1/16in, 1/32in, 1/64in, 0.001in, 0.5mm',
      parseRuleStep,
    ),
    typedOption('--thickness <LENGTH>', 'of the blank', parseLengthMm),
    typedOption('--finished-thickness <LENGTH>', 'after flattening', parseLengthMm),
    new Option('--front-wood <KIND>', "the panel's own wood, another, or veneer").choices([
      'same',
      'contrasting',
      'veneered',
    ]),
    many(
      '--as-cut <PIECE=WIDTH>',
      'what a piece really measures: "upper rail=7 3/4in", "strip=4in,4 1/32in" (left, right end), "front=x14in" (length)',
      parseAsCut,
    ),
  ];
}

function many(flags: string, description: string, read: (text: string) => unknown): Option {
  return new Option(flags, description).argParser((text: string, earlier: unknown) => [
    ...(Array.isArray(earlier) ? earlier : []),
    read(text),
  ]) as Option;
}
