import type { Command, OptionValues } from '@commander-js/extra-typings';
import { parseSizeMm } from '../../core/units/parseSizeMm.js';
import { parseCorners } from './parseCorners.js';
import { parseKnown } from './parseKnown.js';
import { parsePositive } from './parsePositive.js';

/** The three ways to give a photo its scale. */
export function addPhotoOptions<A extends unknown[], O extends OptionValues>(verb: Command<A, O>) {
  return verb
    .option(
      '--size <LENGTHxLENGTH>',
      'real size of the panel, left to right x top to bottom',
      parseSizeMm,
    )
    .option(
      '--corners <PLACES>',
      `the panel's corners, "x,y x,y x,y x,y" in photo pixels, clockwise from its top left (with --size)`,
      parseCorners,
    )
    .option(
      '--px-per-mm <NUMBER>',
      'photo pixels per millimetre, for a square-on photo',
      parsePositive,
    )
    .option(
      '--known <DISTANCE>',
      'one known distance, "x,y x,y LENGTH" with the places in photo pixels, for a square-on photo',
      parseKnown,
    );
}
