import { linearLight } from '../colour/linearLight.js';
import { linearRgbToLab } from '../colour/linearRgbToLab.js';
import type { Board } from './board.js';
import { labToLinearRgb } from './labToLinearRgb.js';
import type { ColourShift } from './panelSpec.js';

/** Linear light of the wood by optical density, tabled: entry k is density (k - zero) / perUnit. */
export interface WoodPalette {
  readonly red: Float32Array;
  readonly green: Float32Array;
  readonly blue: Float32Array;
}

export const paletteSize = 4096;
export const palettePerUnit = 1024;
export const paletteZero = 1024;

/** The palette of a board's wood, its base colour moved by `shift` in L*a*b*. */
export function woodPalette(board: Board, shift?: ColourShift): WoodPalette {
  const plain = board.baseColour.map(linearLight) as [number, number, number];
  let base = plain;
  if (shift !== undefined) {
    const [l, a, b] = linearRgbToLab(...plain);
    base = labToLinearRgb([l + shift.dL, a + shift.da, b + shift.db]);
  }
  const tint = (channel: 0 | 1 | 2) =>
    Float32Array.from(
      { length: paletteSize },
      (_, k) =>
        base[channel] *
        Math.exp((-board.character.absorption[channel] * (k - paletteZero)) / palettePerUnit),
    );
  return { red: tint(0), green: tint(1), blue: tint(2) };
}
