/** `front`, or `front 2` where there are several. */
export function numberedName(word: string, index: number, count: number): string {
  return count === 1 ? word : `${word} ${index + 1}`;
}
