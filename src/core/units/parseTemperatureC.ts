import { SeamgrainError } from '../errors.js';

/**
 * Reads a temperature with its scale: `70F`, `21C`, `21.5 °C`, `-5C`.
 * @returns degrees Celsius
 * @throws SeamgrainError `wrongUsage`
 */
export function parseTemperatureC(text: string): number {
  const match = /^\s*([-−]?\d+(?:\.\d+)?)\s*(?:°|º|deg)?\s*([cf])\s*$/i.exec(text);
  if (!match) {
    throw new SeamgrainError('wrongUsage', `'${text}' is not a temperature`, 'write 70F or 21C');
  }
  const degrees = Number(match[1]!.replace('−', '-'));
  return match[2]!.toLowerCase() === 'c' ? degrees : ((degrees - 32) * 5) / 9;
}
