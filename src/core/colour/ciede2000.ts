import type { Lab } from './lab.js';

const degree = Math.PI / 180;
const pow7of25 = 25 ** 7;

/**
 * CIEDE2000 colour difference: the step of colour between two boards as an eye sees it.
 *
 * About 0.8 is seen by half of all observers when the two colours touch (Paravina et al. 2015).
 * Weights kL = kC = kH = 1.
 *
 * @param first colour of one side.
 * @param second colour of the other side.
 * @returns difference, 0 or more; the same for both orders.
 * Source: CIE 142-2001; formulas (2) to (22) of Sharma, Wu, Dalal 2005, Color Res. Appl. 30(1),
 * doi:10.1002/col.20070.
 */
export function ciede2000(first: Lab, second: Lab): number {
  const chromaMean7 =
    ((Math.hypot(first[1], first[2]) + Math.hypot(second[1], second[2])) / 2) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(chromaMean7 / (chromaMean7 + pow7of25));
  const a1 = stretch * first[1];
  const a2 = stretch * second[1];
  const chroma1 = Math.hypot(a1, first[2]);
  const chroma2 = Math.hypot(a2, second[2]);
  const hue1 = hueDeg(a1, first[2]);
  const hue2 = hueDeg(a2, second[2]);

  const hueMeanChroma = chroma1 * chroma2;
  let hueStep = hueMeanChroma === 0 ? 0 : hue2 - hue1;
  if (hueStep > 180) hueStep -= 360;
  else if (hueStep < -180) hueStep += 360;
  const lightnessStep = second[0] - first[0];
  const chromaStep = chroma2 - chroma1;
  const hueDifference = 2 * Math.sqrt(hueMeanChroma) * Math.sin((hueStep / 2) * degree);

  const lightness50 = ((first[0] + second[0]) / 2 - 50) ** 2;
  const chroma = (chroma1 + chroma2) / 2;
  const hue = meanHueDeg(hue1, hue2, hueMeanChroma === 0);
  const t =
    1 -
    0.17 * Math.cos((hue - 30) * degree) +
    0.24 * Math.cos(2 * hue * degree) +
    0.32 * Math.cos((3 * hue + 6) * degree) -
    0.2 * Math.cos((4 * hue - 63) * degree);
  const l = lightnessStep / (1 + (0.015 * lightness50) / Math.sqrt(20 + lightness50));
  const c = chromaStep / (1 + 0.045 * chroma);
  const h = hueDifference / (1 + 0.015 * chroma * t);
  return Math.sqrt(l * l + c * c + h * h + rotation(chroma, hue) * c * h);
}

function hueDeg(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const hue = Math.atan2(b, a) / degree;
  return hue < 0 ? hue + 360 : hue;
}

function meanHueDeg(hue1: number, hue2: number, grey: boolean): number {
  const sum = hue1 + hue2;
  if (grey) return sum;
  if (Math.abs(hue1 - hue2) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

/** The interaction of chroma and hue in the blue, R_T. */
function rotation(chroma: number, hue: number): number {
  const chroma7 = chroma ** 7;
  const spread = 30 * Math.exp(-(((hue - 275) / 25) ** 2));
  return -2 * Math.sqrt(chroma7 / (chroma7 + pow7of25)) * Math.sin(2 * spread * degree);
}
