/** A name longer than this is cut: it must fit a heading on a phone, letters. */
const longest = 22;

/** What a maker would call a photo: its file's name without folder and ending, cut when long. */
export function photoName(photo: string): string {
  const name = photo.replace(/^.*[\\/]/, '').replace(/\.(jpe?g|png|webp|tiff?|avif|heic)$/i, '');
  return name.length > longest && !name.includes(' ') ? `${name.slice(0, longest - 1)}…` : name;
}
