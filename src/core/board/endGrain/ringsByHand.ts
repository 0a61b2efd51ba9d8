import { halfTurnRad } from '../../geometry/halfTurnRad.js';
import { referenceFor } from './coarsePith.js';
import type { FittedRings } from './fitRings.js';
import type { HandPlaced, TangentLine } from './handPlaced.js';
import { familyAbout, type RingFamily } from './ringFamily.js';

/** How truly a line is laid along a ring by hand (assumption), rad: 3 deg. */
const handRad = 0.052;
/** A pith is marked this well by hand (assumption), mm. */
const handPithMm = 1;

/**
 * Rings as a maker marked them: circles about the marked pith; else about the point where the
 * normals of two or more tangents pass nearest to each other; else, from one tangent, straight
 * rings at that angle over the whole width.
 *
 * @returns null when nothing was marked, or tangents are too short to have a direction.
 */
export function ringsByHand(
  { tangents, pith }: HandPlaced,
  widthMm: number,
  heightMm: number,
): FittedRings | null {
  const middle = [widthMm / 2, heightMm / 2] as const;
  if (pith) {
    const family = familyAbout(pith, ...referenceFor(pith, ...middle, widthMm));
    const turn = handPithMm * Math.abs(family.curvature);
    return placed(family, turn * turn, (handPithMm * family.curvature ** 2) ** 2);
  }
  const drawn = tangents.filter((line) => lengthOf(line) > 1);
  if (drawn.length === 0) return null;
  if (drawn.length === 1) {
    const line = drawn[0];
    const family = {
      cxMm: (line.x1Mm + line.x2Mm) / 2,
      cyMm: (line.y1Mm + line.y2Mm) / 2,
      normalRad: Math.atan2(line.y2Mm - line.y1Mm, line.x2Mm - line.x1Mm) + Math.PI / 2,
      curvature: 0,
    };
    return placed(family, handRad ** 2, 0);
  }
  return fromTangents(drawn, ...middle);
}

const lengthOf = ({ x1Mm, y1Mm, x2Mm, y2Mm }: TangentLine) => Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);

const placed = (family: RingFamily, normal: number, curvature: number): FittedRings => ({
  family,
  covariance: [normal, 0, curvature],
  waveRad: 0,
  strayAt: () => ({ rad: 0, seRad: handRad }),
});

/**
 * Least squares for (normal, curvature): the direction across the rings at c + d is
 * n - curvature d, so a tangent t there has t . (n - curvature d) = 0. With n turned so that it
 * lies near the first normal, unknowns are its turn and the curvature; by Gauss-Newton.
 */
function fromTangents(
  lines: readonly TangentLine[],
  cxMm: number,
  cyMm: number,
): FittedRings | null {
  const first = lines[0];
  let normalRad = Math.atan2(first.y2Mm - first.y1Mm, first.x2Mm - first.x1Mm) + Math.PI / 2;
  let curvature = 0;
  let [aa, ab, bb, det] = [0, 0, 0, 0];
  for (let round = 0; round < 30; round++) {
    let [ra, rb] = [0, 0];
    [aa, ab, bb] = [0, 0, 0];
    const [nx, ny] = [Math.cos(normalRad), Math.sin(normalRad)];
    for (const line of lines) {
      const dx = (line.x1Mm + line.x2Mm) / 2 - cxMm;
      const dy = (line.y1Mm + line.y2Mm) / 2 - cyMm;
      const [vx, vy] = [nx - curvature * dx, ny - curvature * dy];
      const v2 = vx * vx + vy * vy + 1e-12;
      const drawn = Math.atan2(line.y2Mm - line.y1Mm, line.x2Mm - line.x1Mm) + Math.PI / 2;
      const r = halfTurnRad(drawn - Math.atan2(vy, vx));
      const a = (vx * nx + vy * ny) / v2;
      const b = (-vx * dy + vy * dx) / v2;
      aa += a * a;
      ab += a * b;
      bb += b * b;
      ra += a * r;
      rb += b * r;
    }
    det = aa * bb - ab * ab;
    if (!(det > 1e-9 * aa * bb)) return null;
    normalRad += (bb * ra - ab * rb) / det;
    curvature += (aa * rb - ab * ra) / det;
  }
  const family = { cxMm, cyMm, normalRad, curvature };
  const noise = handRad ** 2 / det;
  return {
    ...placed(family, bb * noise, aa * noise),
    covariance: [bb * noise, -ab * noise, aa * noise],
  };
}
