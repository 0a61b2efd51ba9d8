import { SeamgrainError } from '../../errors.js';
import { cutClassAngles, type RingAngles } from './ringAngles.js';

/**
 * How much of a board's width movement is tangential: the mean of cos^2(ring angle) over the width.
 * C_width = share C_T + (1 - share) C_R, the rotation of strain [derived], integrated.
 * Around a pith at depth d, x0 from the left end: cos^2 = d^2 / (d^2 + (x - x0)^2), whose mean is
 * d [atan((W - x0)/d) + atan(x0/d)] / W.
 * @param widthMm W, mm
 * @returns 1 for flatsawn, 0 for quartered
 * @throws SeamgrainError `wrongUsage` for an angle outside 0 to 90 or no measured angle
 */
export function tangentialShare(rings: RingAngles, widthMm: number): number {
  switch (rings.kind) {
    case 'angle':
      return cosSquared(rings.angleDeg);
    case 'class':
      return cosSquared(cutClassAngles[rings.cut].takenDeg);
    case 'pith':
      return aroundPith(rings.xMm, Math.abs(rings.depthMm), widthMm);
    case 'measured':
      return overProfile(rings.ringAngle, widthMm);
  }
}

function cosSquared(angleDeg: number): number {
  if (!(angleDeg >= 0 && angleDeg <= 90)) {
    throw new SeamgrainError(
      'wrongUsage',
      `a ring angle of ${angleDeg} degrees does not exist`,
      'give 0 (flatsawn) to 90 (quartered)',
    );
  }
  return Math.cos((angleDeg * Math.PI) / 180) ** 2;
}

function aroundPith(xMm: number, depthMm: number, widthMm: number): number {
  if (depthMm === 0) return 0;
  const angle = Math.atan((widthMm - xMm) / depthMm) + Math.atan(xMm / depthMm);
  return (depthMm * angle) / widthMm;
}

/** Trapezoid rule; the outermost angles hold to the edges. */
function overProfile(
  ringAngle: readonly { readonly xMm: number; readonly angleDeg: number }[],
  widthMm: number,
): number {
  if (ringAngle.length === 0) {
    throw new SeamgrainError('wrongUsage', 'no ring angle was measured', 'give a ring angle');
  }
  const sorted = [...ringAngle].sort((a, b) => a.xMm - b.xMm);
  const first = sorted[0]!;
  const last = sorted[sorted.length - 1]!;
  const points = [{ ...first, xMm: 0 }, ...sorted, { ...last, xMm: widthMm }];
  const sum = points.slice(1).reduce((total, point, index) => {
    const before = points[index]!;
    const mean = (cosSquared(point.angleDeg) + cosSquared(before.angleDeg)) / 2;
    return total + mean * Math.max(0, point.xMm - before.xMm);
  }, 0);
  return sum / widthMm;
}
