import type { Plane } from '../image/plane.js';

/** So many times more must change from left to right than from top to bottom (squares). */
const leastRatio = 2;

/**
 * Says so where the grain runs up and down in the photo: then a cut from left to right, which is
 * taken for a rip, goes across the grain. The wood changes far more from left to right there than
 * from top to bottom: squared differences between neighbouring patches are summed over the panel,
 * and for lines at an angle a to the length their ratio is tan(a)^2, so that 2 stands for 55
 * degrees.
 * @param lightness L* in patches of about a millimetre
 * @param cuts what is read from left to right: rips, or edges that meet
 * @returns one note, or none
 */
export function standingGrainNotes(lightness: Plane, cuts: 'rips' | 'edges'): string[] {
  const { width, height, data } = lightness;
  let [across, down] = [0, 0];
  for (let y = 0; y + 1 < height; y++) {
    for (let x = 0; x + 1 < width; x++) {
      const i = y * width + x;
      across += (data[i + 1]! - data[i]!) ** 2;
      down += (data[i + width]! - data[i]!) ** 2;
    }
  }
  if (across <= leastRatio * down) return [];
  const wrong =
    cuts === 'rips' ? 'the rips judged here would cut across it' : 'its ends are read as its edges';
  return [
    `The grain seems to run up and down in this photo: ${wrong}. Turn the photo so that the grain runs from left to right.`,
  ];
}
