/** A stretch of text; `fraction` when it is a maker's fraction to be set as one. */
export interface TextPart {
  readonly text: string;
  readonly fraction?: { readonly above: string; readonly below: string };
}

/** Splits `14 3/8 in` into words and fractions, losing no sign. */
export function fractionParts(text: string): TextPart[] {
  return text
    .split(/((?<![\d/.])\d{1,3}\/\d{1,3}(?![\d/]))/)
    .filter((part) => part !== '')
    .map((part) => {
      const match = /^(\d{1,3})\/(\d{1,3})$/.exec(part);
      return match
        ? { text: part, fraction: { above: match[1]!, below: match[2]! } }
        : { text: part };
    });
}
