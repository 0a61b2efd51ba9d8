/** No-break spaces inside every length, so that `14 3/8 in` never parts at the end of a line. */
export function keepTogether(text: string): string {
  return text.replace(/(\d) (?=\d+\/\d|(?:in|mm|ft|m|cm|degrees?|px\/mm|%)(?![a-z]))/g, '$1\u00a0');
}
