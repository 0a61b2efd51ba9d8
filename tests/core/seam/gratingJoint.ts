import type { PanelPhoto } from '../../../src/core/image/panelPhoto.js';
import { createPlane, type Plane } from '../../../src/core/image/plane.js';
import type { RgbImage } from '../../../src/core/image/rgbImage.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import type { LineMm } from '../../../src/core/results/scoreResult.js';
import { type LineMeasures, lineMeasures } from '../../../src/core/seam/lineMeasures.js';
import { ownLines } from '../../../src/core/seam/ownLines.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { type PanelPlanes, seamWood } from '../../../src/core/seam/seamWood.js';

/** A joint through even straight lines: side B shows the wood at (x + slide, y + lost). */
export interface GratingJoint {
  readonly angleDeg: number;
  /** Grain of side B where it differs. */
  readonly angleBDeg?: number;
  readonly spacingMm: number;
  readonly contrast: number;
  /** Rings no two alike: twelve sinusoids of 2 to 11 mm in place of the one. */
  readonly uneven?: boolean;
  readonly lostMm?: number;
  readonly slideMm?: number;
  /** How much more is lost at the right end than at the left. */
  readonly wedgeMm?: number;
  readonly noise?: number;
  readonly widthMm?: number;
  readonly heightMm?: number;
  readonly seamYMm?: number;
  readonly pxPerMm?: number;
  /** L*, a*, b* that side B differs by. */
  readonly colourStep?: readonly [number, number, number];
  /** Dark line along the joint: width mm and depth in log luminance. */
  readonly glue?: readonly [number, number];
}

const usual = { widthMm: 200, heightMm: 80, seamYMm: 40, pxPerMm: 6 };

/** The figure across the grain, u in mm, its amplitude 1 to 2. */
function figureOf({ uneven, spacingMm }: GratingJoint): (u: number) => number {
  if (!uneven) return (u) => Math.cos((2 * Math.PI * u) / spacingMm);
  const random = createRandom(3);
  const rings = Array.from({ length: 12 }, () => ({
    k: (2 * Math.PI) / random.uniform(2, 11),
    phase: random.uniform(0, 2 * Math.PI),
  }));
  return (u) => 0.5 * rings.reduce((sum, { k, phase }) => sum + Math.sin(k * u + phase), 0);
}

/** The planes of a panel whose log luminance is a sinusoid, exactly as the formula has it. */
export function gratingPlanes(joint: GratingJoint): PanelPlanes {
  const { widthMm, heightMm, seamYMm, pxPerMm } = { ...usual, ...joint };
  const width = Math.round(widthMm * pxPerMm);
  const height = Math.round(heightMm * pxPerMm);
  const logLuminance = createPlane(width, height);
  const random = createRandom(11);
  const figure = figureOf(joint);
  const [glueMm, depth] = joint.glue ?? [0, 0];
  for (let j = 0; j < height; j++) {
    const below = (j + 0.5) / pxPerMm > seamYMm;
    const yMiddle = (j + 0.5) / pxPerMm + (below ? (joint.lostMm ?? 0) : 0);
    const rise = below ? (joint.wedgeMm ?? 0) / width : 0;
    const angle = ((below ? (joint.angleBDeg ?? joint.angleDeg) : joint.angleDeg) * Math.PI) / 180;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const dark = Math.abs((j + 0.5) / pxPerMm - seamYMm) < glueMm / 2 ? depth : 0;
    for (let i = 0; i < width; i++) {
      const x = (i + 0.5) / pxPerMm + (below ? (joint.slideMm ?? 0) : 0);
      const y = yMiddle + rise * (i + 0.5 - width / 2);
      logLuminance.data[j * width + i] = -1 + joint.contrast * figure(y * cos - x * sin) - dark;
      if (joint.noise) logLuminance.data[j * width + i]! += joint.noise * random.normal();
    }
  }
  const reduceBy = Math.round(pxPerMm);
  const patches = (level: number, step: number): Plane => {
    const plane = createPlane(Math.floor(width / reduceBy), Math.floor(height / reduceBy));
    for (let j = 0; j < plane.height; j++) {
      const below = ((j + 0.5) * reduceBy) / pxPerMm > seamYMm;
      plane.data.fill(level + (below ? step : 0), j * plane.width, (j + 1) * plane.width);
    }
    return plane;
  };
  const [dL, da, db] = joint.colourStep ?? [0, 0, 0];
  const lab = { lightness: patches(60, dL), a: patches(10, da), b: patches(20, db), reduceBy };
  return { pxPerMm, logLuminance, lab };
}

/** The joint and the boards' own lines as `scorePanel` reads them at 600 mm. */
export function measuredJoint(joint: GratingJoint): {
  readonly seam: LineMeasures;
  readonly own: LineMeasures[];
} {
  const { widthMm, heightMm, seamYMm } = { ...usual, ...joint };
  const frame = seamFrame({ x1Mm: 0, y1Mm: seamYMm, x2Mm: widthMm, y2Mm: seamYMm });
  const reach = { aMm: seamYMm, bMm: heightMm - seamYMm };
  const wood = seamWood(gratingPlanes(joint), frame, reach.aMm, reach.bMm);
  const windowMm = (600 * Math.PI) / 180;
  return {
    seam: lineMeasures(wood, 0, windowMm),
    own: ownLines(wood, reach, windowMm, () => true),
  };
}

/** Luminance of a plane of log luminance as a grey photo, 8 bits, dithered. */
export function greyPhoto({ logLuminance, pxPerMm }: PanelPlanes): PanelPhoto {
  const { width, height, data } = logLuminance;
  const random = createRandom(5);
  const image: RgbImage = { width, height, data: new Uint8Array(3 * width * height) };
  data.forEach((v, i) => {
    const y = Math.exp(v);
    const code = 255 * (y <= 0.0031308 ? 12.92 * y : 1.055 * y ** (1 / 2.4) - 0.055);
    image.data.fill(Math.min(255, Math.max(0, Math.floor(code + random.next()))), 3 * i, 3 * i + 3);
  });
  return { image, pxPerMm, widthMm: width / pxPerMm, heightMm: height / pxPerMm, notes: [] };
}

/** A photo with x and y exchanged. */
export function transposedPhoto(photo: PanelPhoto): PanelPhoto {
  return movedPhoto(photo, photo.image.height, photo.image.width, (x, y) => [y, x]);
}

/** A photo mirrored left to right, or turned half round. */
export function mirroredPhoto(photo: PanelPhoto): PanelPhoto {
  const { width, height } = photo.image;
  return movedPhoto(photo, width, height, (x, y) => [width - 1 - x, y]);
}

export function turnedPhoto(photo: PanelPhoto): PanelPhoto {
  const { width, height } = photo.image;
  return movedPhoto(photo, width, height, (x, y) => [width - 1 - x, height - 1 - y]);
}

function movedPhoto(
  { image, pxPerMm, notes }: PanelPhoto,
  width: number,
  height: number,
  from: (x: number, y: number) => [number, number],
): PanelPhoto {
  const data = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [sx, sy] = from(x, y);
      const s = 3 * (sy * image.width + sx);
      data.set(image.data.subarray(s, s + 3), 3 * (y * width + x));
    }
  }
  const size = { widthMm: width / pxPerMm, heightMm: height / pxPerMm };
  return { image: { width, height, data }, pxPerMm, ...size, notes };
}

/** A line across the panel at y. */
export const ripAt = (yMm: number, widthMm: number): LineMm => ({
  x1Mm: 0,
  y1Mm: yMm,
  x2Mm: widthMm,
  y2Mm: yMm,
});
