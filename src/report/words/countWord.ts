const words = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** `two`, `twelve`, `13`: numbers as they stand in a sentence. */
export function countWord(count: number): string {
  return words[count] ?? String(count);
}
