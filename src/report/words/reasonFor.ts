/**
 * The note that explains why a quantity is missing, made fit to follow `because`.
 * @param notes the notes of the same seam
 * @param about what the note should speak of; without it the first note is taken
 * @returns the note's first sentence without its capital and full stop, or "" when there is none
 */
export function reasonFor(notes: readonly string[], about?: RegExp): string {
  // What is meant to be seen explains nothing that is missing.
  const reasons = notes.filter((text) => !/open gap or a reveal/.test(text));
  const note = about ? reasons.find((text) => about.test(text)) : reasons[0];
  if (!note) return '';
  const sentence = note
    .trim()
    .split(/(?<=[.!?])\s/)[0]!
    .replace(/[.!]$/, '');
  // "The lines ..." loses its capital; "V ..." and "A ..." as names of a side keep theirs.
  return /^[A-Z][a-z]+\b/.test(sentence) && !/^(I|A|B)\b/.test(sentence)
    ? sentence.charAt(0).toLowerCase() + sentence.slice(1)
    : sentence;
}
