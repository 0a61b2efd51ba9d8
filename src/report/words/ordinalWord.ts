const words = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/**
 * `first`, `tenth`, `11th`.
 * @param place counted from 1
 */
export function ordinalWord(place: number): string {
  const word = words[place - 1];
  if (word) return word;
  const teen = place % 100 >= 11 && place % 100 <= 13;
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th');
  return `${place}${ending}`;
}
