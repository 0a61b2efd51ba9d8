import type { WoodSpecies } from './woodSpecies.js';

/**
 * Veneer on plywood as a "species": 0.0002 for each 10 % relative humidity, in both directions
 * (APA – The Engineered Wood Association, dimensional stability of plywood [L2]); with 5 % relative
 * humidity for 1 % moisture content that is 0.0001 per 1 %. Fibreboard moves more.
 */
export const stableCore: WoodSpecies = {
  name: 'veneered front on a stable core',
  botanical: '',
  aliases: [],
  shrinkagePercent: { radial: 0.299, tangential: 0.299 },
  coefficient: { radial: 0.0001, tangential: 0.0001 },
  fibreSaturationPercent: 30,
  marks: 'plywood, C [L2] of 0.0002 per 10 % relative humidity',
};
