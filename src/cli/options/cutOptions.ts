import type { Option } from '@commander-js/extra-typings';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parseDistance } from './parseDistance.js';
import { parseKerf } from './parseKerf.js';
import { typedOption } from './typedOption.js';

/** What `cutOptions` read as. */
export interface CutFlags {
  readonly distance?: number;
  readonly kerf?: number;
  readonly dress?: number;
}

/** The saw, the dressing and the eye; `forecast` and `compare` share them. */
export function cutOptions(): Option[] {
  return [
    typedOption('--distance <LENGTH>', 'viewing distance (default 600mm)', parseDistance),
    typedOption('--kerf <LENGTH>', 'width of the saw cut (default 1/8in)', parseKerf),
    typedOption('--dress <LENGTH>', 'dressed off each jointed edge (default 0mm)', parseLengthMm),
  ];
}
