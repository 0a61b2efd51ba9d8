import type { Lab } from '../colour/lab.js';
import { linearRgbToLab } from '../colour/linearRgbToLab.js';
import type { Board } from './board.js';
import type { ColourShift } from './panelSpec.js';
import type { RingProfile } from './ringProfile.js';
import { palettePerUnit, paletteZero, woodPalette } from './woodPalette.js';

/** Mean colour of a board's wood over all its rings (pores, rays and drift left out), L*a*b*. */
export function meanBoardColour(board: Board, profile: RingProfile, shift?: ColourShift): Lab {
  const { red, green, blue } = woodPalette(board, shift);
  const size = board.contrast * board.character.ringDensity;
  const sum = [0, 0, 0];
  let count = 0;
  for (let k = 0; k + 1 < profile.integral.length; k += 5) {
    const density = (size * (profile.integral[k + 1]! - profile.integral[k]!)) / profile.stepMm;
    const entry = Math.round(paletteZero + palettePerUnit * density);
    sum[0]! += red[entry]!;
    sum[1]! += green[entry]!;
    sum[2]! += blue[entry]!;
    count++;
  }
  return linearRgbToLab(sum[0]! / count, sum[1]! / count, sum[2]! / count);
}
