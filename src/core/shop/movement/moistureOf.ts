import { SeamgrainError } from '../../errors.js';
import { emcPercent } from './emcPercent.js';
import type { WoodState } from './gapInput.js';

/**
 * Moisture content of wood in a state, %.
 * @throws SeamgrainError `wrongUsage` for a climate or a moisture content that cannot be
 */
export function moistureOf(state: WoodState): number {
  if (state.kind === 'moisture') {
    if (state.percent >= 0 && state.percent <= 100) return state.percent;
    throw new SeamgrainError(
      'wrongUsage',
      `a moisture content of ${state.percent} % cannot be`,
      'give 0 to 100 %, indoors 5 to 12 %',
    );
  }
  const { relativeHumidityPercent, temperatureC } = state.climate;
  if (
    !(relativeHumidityPercent >= 0 && relativeHumidityPercent <= 100) ||
    !(temperatureC >= -20 && temperatureC <= 140)
  ) {
    throw new SeamgrainError(
      'wrongUsage',
      `${relativeHumidityPercent} % relative humidity at ${temperatureC.toFixed(1)} C is outside what the equation knows`,
      'give 0 to 100 % and -20 to 140 C (-4 to 284 F)',
    );
  }
  return emcPercent(relativeHumidityPercent, temperatureC);
}
