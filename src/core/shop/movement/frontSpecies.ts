import { SeamgrainError } from '../../errors.js';
import { coefficientFromShrinkage } from './coefficientFromShrinkage.js';
import { findSpecies } from './findSpecies.js';
import type { GapInput } from './gapInput.js';
import { stableCore } from './stableCore.js';
import type { WoodSpecies } from './woodSpecies.js';

/**
 * What the front moves like: its species, a wood with the shrinkage given, or a stable core.
 * @throws SeamgrainError `wrongUsage`
 */
export function frontSpecies(input: GapInput): WoodSpecies {
  if (input.isVeneered) return stableCore;
  const { shrinkagePercent, species } = input;
  if (!shrinkagePercent) return findSpecies(species);
  const { radial, tangential } = shrinkagePercent;
  if (!(radial > 0 && tangential > 0 && radial < 30 && tangential < 30)) {
    throw new SeamgrainError(
      'wrongUsage',
      'shrinkage must lie between 0 and 30 %',
      'give radial, then tangential shrinkage, green to ovendry: 4.8%,9.9%',
    );
  }
  return {
    name: species,
    botanical: '',
    aliases: [],
    shrinkagePercent,
    coefficient: {
      radial: coefficientFromShrinkage(radial),
      tangential: coefficientFromShrinkage(tangential),
    },
    fibreSaturationPercent: 30,
    marks: 'shrinkage as given, C computed from it',
  };
}
