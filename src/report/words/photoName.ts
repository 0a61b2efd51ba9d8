import { cutInMiddle } from './cutInMiddle.js';

/** A name longer than this is cut for a heading: it must fit on a phone, letters. */
const longest = 22;

/**
 * What a maker would call a photo: its file's name without folder and ending. One too long is cut
 * in its middle: cameras and makers tell their photos apart at the end of the name.
 * @param most letters that there is room for, default 22; a name with spaces can be wrapped
 *   instead and is never cut.
 */
export function photoName(photo: string, most = longest): string {
  const name = photo.replace(/^.*[\\/]/, '').replace(/\.(jpe?g|png|webp|tiff?|avif|heic)$/i, '');
  return name.includes(' ') ? name : cutInMiddle(name, most);
}
