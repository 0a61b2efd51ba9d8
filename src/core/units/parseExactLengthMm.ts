import Fraction from 'fraction.js';
import { SeamgrainError } from '../errors.js';
import { normaliseLengthText } from './normaliseLengthText.js';

const hint = 'write the unit: 190mm, 19cm, 7.5in, 7 1/2" or 7-1/2in';
const number = String.raw`(\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d*)?|\.\d+)`;
const oneUnit = new RegExp(`^(-)?${number} ?(mm|cm|m|in|inch|inches|"|ft|foot|feet|')$`);
const feetAndInches = new RegExp(
  `^(-)?(\\d+) ?(?:ft|foot|feet|')[ -]?${number} ?(?:in|inch|inches|")$`,
);
const exactMmPer: Readonly<Record<string, Fraction>> = {
  mm: new Fraction(1),
  cm: new Fraction(10),
  m: new Fraction(1000),
  in: new Fraction(127, 5),
  ft: new Fraction(1524, 5),
};
const unitNames: Readonly<Record<string, string>> = {
  inch: 'in',
  inches: 'in',
  '"': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
};

/**
 * Reads a length with its unit, exactly.
 * `190mm`, `19cm`, `1.9m`, `7.5in`, `7 1/2"`, `7-1/2in`, `1/8in`, `2' 3 1/2"`, `2ft 3in`.
 * @param text what was typed; a bare number is refused, because 7.5 could be either
 * @param sign `"notNegative"` (default) refuses a minus; `"any"` allows it (a slide, a position)
 * @returns millimetres as a rational: 1/8 in is 127/40
 * @throws SeamgrainError `badLength`
 */
export function parseExactLengthMm(
  text: string,
  sign: 'notNegative' | 'any' = 'notNegative',
): Fraction {
  const plain = normaliseLengthText(text);
  const value = readFeetAndInches(plain) ?? readOneUnit(plain);
  if (value === null) throw refusal(text, plain);
  if (sign === 'notNegative' && value.compare(0) < 0) {
    throw new SeamgrainError('badLength', `'${text}' is negative`, 'give a length of zero or more');
  }
  return value;
}

function readFeetAndInches(plain: string): Fraction | null {
  const match = feetAndInches.exec(plain);
  if (!match) return null;
  const inches = readNumber(match[3]!);
  if (inches === null) return null;
  const sum = exactMmPer.ft!.mul(match[2]!).add(exactMmPer.in!.mul(inches));
  return match[1] ? sum.neg() : sum;
}

function readOneUnit(plain: string): Fraction | null {
  const match = oneUnit.exec(plain);
  if (!match) return null;
  const value = readNumber(match[2]!);
  if (value === null) return null;
  const unit = match[3]!;
  const mm = exactMmPer[unitNames[unit] ?? unit]!.mul(value);
  return match[1] ? mm.neg() : mm;
}

/** `7 1/2`, `7-1/2`, `1/8`, `7.5`, `.5`; null when a fraction has nothing below the line. */
function readNumber(text: string): Fraction | null {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) return new Fraction(text.endsWith('.') ? text.slice(0, -1) : text);
  if (Number(mixed[3]) === 0) return null;
  return new Fraction(mixed[1] ?? 0).add(new Fraction(`${mixed[2]}/${mixed[3]}`));
}

function refusal(text: string, plain: string): SeamgrainError {
  if (plain === '') return new SeamgrainError('badLength', 'a length is missing', hint);
  if (new RegExp(`^-?${number}$`).test(plain)) {
    const shown = text.trim();
    return new SeamgrainError(
      'badLength',
      `'${shown}' has no unit`,
      `write ${shown}mm or ${shown}in`,
    );
  }
  if (/^-?\d+,\d+ ?[a-z"']/.test(plain)) {
    return new SeamgrainError(
      'badLength',
      `'${text}' has a decimal comma`,
      `write ${plain.replace(',', '.')}`,
    );
  }
  return new SeamgrainError('badLength', `'${text}' is not a length`, hint);
}
