import { Option } from '@commander-js/extra-typings';
import { SeamgrainError } from '../../core/errors.js';
import type { PanelBox } from '../../core/rip/panelBox.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parsePointsMm } from '../../core/units/parsePointsMm.js';
import { parseSizeMm, type SizeMm } from '../../core/units/parseSizeMm.js';
import type { AnswerFlags } from '../options/answerFlags.js';
import { type CutFlags, cutOptions } from '../options/cutOptions.js';
import { type ImagineFlags, imagineOptions } from '../options/imagineOptions.js';
import { manyOption } from '../options/manyOption.js';
import { parseLeaveOut } from '../options/parseLeaveOut.js';
import { parseRingAngle } from '../options/parseRingAngle.js';
import type { PhotoOptions } from '../options/photoScaleOf.js';
import { typedOption } from '../options/typedOption.js';

/** The flags of `forecast`, read. */
export interface ForecastFlags extends PhotoOptions, CutFlags, ImagineFlags, AnswerFlags {
  readonly rip?: readonly number[];
  readonly front?: SizeMm;
  readonly within?: PanelBox;
  readonly margin?: number;
  readonly ends?: 'stay' | 'close';
  readonly eitherWayUp?: true;
  readonly places?: number;
  readonly spare?: number;
  readonly reveal?: number;
  readonly thorough?: true;
  readonly leaveOut?: readonly (readonly (readonly [number, number])[])[];
  readonly ringAngle?: number;
}

/** Everything that a forecast depends on besides the photo. */
export function forecastFlags(): Option[] {
  return [
    manyOption('--rip <LENGTH>', 'a rip this far from the top; again for another', (text) =>
      parseLengthMm(text),
    ),
    typedOption(
      '--front <LENGTHxLENGTH>',
      'find the best place for a front of this size',
      parseSizeMm,
    ),
    typedOption(
      '--within <BOX>',
      'the front lies within "x,y x,y", two corners on the panel',
      parseBox,
    ),
    typedOption('--margin <LENGTH>', 'wood left on every side of the front', parseLengthMm),
    new Option(
      '--ends <WHAT>',
      'the end pieces stay at their stations, or close their ends by a kerf each',
    ).choices(['stay', 'close']),
    new Option('--either-way-up', 'the panel may be turned so that its lower edge is up'),
    typedOption('--places <NUMBER>', 'how many places to report (default 5)', parsePlaces),
    ...cutOptions(),
    typedOption(
      '--spare <LENGTH>',
      'length to spare for sliding pieces (default 1in)',
      parseLengthMm,
    ),
    typedOption(
      '--reveal <LENGTH>',
      "trimmed off the front's edges (default 1/16in)",
      parseLengthMm,
    ),
    new Option(
      '--thorough',
      'read every rip of the curve as a score reads a joint; takes some four times as long',
    ),
    new Option(
      '--leave-out <AREA>',
      'an area not to judge, "x,y x,y x,y" with units; may be repeated',
    ).argParser(parseLeaveOut) as Option,
    typedOption(
      '--ring-angle <ANGLE>',
      'rings to the face, 0deg to 90deg, flatsawn, rift or quartered: what planing does',
      parseRingAngle,
    ),
    ...imagineOptions(),
  ];
}

/** Reads `--within`: two opposite corners in any order. */
function parseBox(text: string): PanelBox {
  const [a, b] = parsePointsMm(text, 2);
  const box = {
    x1Mm: Math.min(a.xMm, b.xMm),
    y1Mm: Math.min(a.yMm, b.yMm),
    x2Mm: Math.max(a.xMm, b.xMm),
    y2Mm: Math.max(a.yMm, b.yMm),
  };
  if (box.x2Mm > box.x1Mm && box.y2Mm > box.y1Mm) return box;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is no box.`,
    'Give two opposite corners: "2in,1in 20in,8in".',
  );
}

function parsePlaces(text: string): number {
  const count = Number(text);
  if (/^\d+$/.test(text) && count >= 1 && count <= 20) return count;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not a number of places.`,
    'Give a whole number from 1 to 20.',
  );
}
