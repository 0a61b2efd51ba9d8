import { Option } from '@commander-js/extra-typings';
import { parseRingAngles } from '../../core/shop/movement/parseRingAngles.js';
import { parseClimate } from '../../core/units/parseClimate.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parsePercent } from '../../core/units/parsePercent.js';
import { parseMonths } from './parseMonths.js';
import { parsePlace } from './parsePlace.js';
import { parseShrinkage } from './parseShrinkage.js';
import { typedOption } from './typedOption.js';

/**
 * What the movement of a front depends on; `gap` and the sheet of `layout` share them.
 * `GapOptions` is what they read as.
 */
export function gapOptions(): Option[] {
  return [
    new Option('--species <NAME>', 'wood of the front: hard maple, white oak, Quercus alba, …'),
    typedOption(
      '--shrinkage <R%,T%>',
      'radial and tangential shrinkage, green to ovendry, of a wood not in the table',
      parseShrinkage,
    ),
    typedOption(
      '--ring-angle <ANGLE>',
      'rings to the wide face: 0deg to 90deg, flatsawn, rift or quartered',
      parseRingAngles,
    ),
    typedOption('--from <RH%@TEMPERATURE>', 'air when the front is fitted: 35%@70F', parseClimate),
    typedOption(
      '--to <RH%@TEMPERATURE>',
      'air at the other end of the year: 80%@21C',
      parseClimate,
    ),
    typedOption('--mc-from <PERCENT>', 'moisture content when fitted, not --from', parsePercent),
    typedOption('--mc-to <PERCENT>', 'moisture content later, not --to', parsePercent),
    typedOption('--months <CLIMATES>', 'one to twelve climates, January first', parseMonths),
    new Option(
      '--surround <NAME>',
      'framed (an opening that stays), same (solid panel of the front’s wood; usual in layout), or a species',
    ),
    new Option('--veneered', 'a veneered front on a stable core'),
    typedOption('--reveal <LENGTH>', 'gap that stays when the front is widest', parseLengthMm),
    typedOption('--chamfer <LENGTH>', 'chamfer on the edges of front and opening', parseLengthMm),
    typedOption('--place <WHERE>', 'where the gap goes: top, bottom or split', parsePlace),
  ];
}
