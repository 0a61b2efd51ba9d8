/** The text with so much of its middle left out that it has at most `most` letters. */
export function cutInMiddle(text: string, most: number): string {
  const letters = [...text];
  if (letters.length <= most) return text;
  const tail = Math.max(1, Math.ceil((most - 1) * 0.6));
  const head = Math.max(0, most - 1 - tail);
  return `${letters.slice(0, head).join('')}…${letters.slice(-tail).join('')}`;
}
