import { SeamgrainError } from '../errors.js';
import { parsePercent } from './parsePercent.js';
import { parseTemperatureC } from './parseTemperatureC.js';

/** The air that wood stands in. */
export interface Climate {
  /** Relative humidity, %, 0 to 100. */
  readonly relativeHumidityPercent: number;
  readonly temperatureC: number;
}

/**
 * Reads a climate, `RH%@TEMPERATURE`: `35%@70F`, `80% at 21C`.
 * @throws SeamgrainError `wrongUsage`
 */
export function parseClimate(text: string): Climate {
  const parts = text.split(/@|\bat\b|,/);
  if (parts.length !== 2) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a climate`,
      'write relative humidity and temperature: 35%@70F or 80% at 21C',
    );
  }
  return {
    relativeHumidityPercent: parsePercent(parts[0]!),
    temperatureC: parseTemperatureC(parts[1]!),
  };
}
