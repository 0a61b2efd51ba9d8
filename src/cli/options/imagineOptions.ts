import { Option } from '@commander-js/extra-typings';
import { SeamgrainError } from '../../core/errors.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import type { WoodSetting } from '../../core/wood/woodSetting.js';
import { manyOption } from './manyOption.js';
import { parsePositive } from './parsePositive.js';
import { parseRingAngle } from './parseRingAngle.js';
import { parseSeed } from './parseSeed.js';
import { typedOption } from './typedOption.js';

/** What `imagineOptions` read as. */
export interface ImagineFlags {
  readonly imagine?: readonly number[];
  readonly ringWidth?: number;
  readonly contrast?: number;
  readonly wood?: WoodSetting;
  readonly seed?: number;
}

/** What wood that is not there yet looks like; `forecast` and `compare` share them. */
export function imagineOptions(): Option[] {
  return [
    typedOption('--ring-width <LENGTH>', 'width of the year rings', parseRingWidth),
    manyOption(
      '--imagine <ANGLE>',
      'compare with wood whose rings stand so to the face: 45deg, rift, quartered; may be repeated',
      parseRingAngle,
    ),
    typedOption(
      '--contrast <NUMBER>',
      'strength of the imagined ring lines, 1 as usual',
      parsePositive,
    ),
    new Option('--wood <KIND>', 'what is imagined').choices([
      'ring-porous',
      'diffuse-porous',
      'softwood',
    ]),
    typedOption('--seed <N>', 'which board is imagined (default 1)', parseSeed),
  ];
}

function parseRingWidth(text: string): number {
  const mm = parseLengthMm(text);
  if (mm >= 0.4 && mm <= 6) return mm;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is no width of a year ring.`,
    'Give 0.4mm to 6mm; count rings over an inch of end grain.',
  );
}
