/**
 * A family of concentric rings written so that straight ones are no special case: the pith lies at
 * c + n / curvature, n = (cos normalRad, sin normalRad); curvature 0 is a pith infinitely far away.
 */
export interface RingFamily {
  /** Reference point c, mm. */
  readonly cxMm: number;
  readonly cyMm: number;
  /** Direction from c to the pith. */
  readonly normalRad: number;
  /** One over the distance from c to the pith, 1/mm; negative: the pith lies the other way. */
  readonly curvature: number;
}

/** The family about a pith. */
export function familyAbout(
  pith: { readonly xMm: number; readonly yMm: number },
  cxMm: number,
  cyMm: number,
): RingFamily {
  const [dx, dy] = [pith.xMm - cxMm, pith.yMm - cyMm];
  return {
    cxMm,
    cyMm,
    normalRad: Math.atan2(dy, dx),
    curvature: 1 / Math.max(1e-6, Math.hypot(dx, dy)),
  };
}

/** Where the pith is; infinitely far for straight rings. */
export function pithOf({ cxMm, cyMm, normalRad, curvature }: RingFamily): {
  readonly xMm: number;
  readonly yMm: number;
} {
  return {
    xMm: cxMm + Math.cos(normalRad) / curvature,
    yMm: cyMm + Math.sin(normalRad) / curvature,
  };
}

/**
 * Direction across the rings at a point, and how near the pith is: v = n - curvature (p - c),
 * which points to the pith and has length 0 there and 1 at c.
 */
export function acrossRings(
  { cxMm, cyMm, normalRad, curvature }: RingFamily,
  xMm: number,
  yMm: number,
): readonly [vx: number, vy: number] {
  return [
    Math.cos(normalRad) - curvature * (xMm - cxMm),
    Math.sin(normalRad) - curvature * (yMm - cyMm),
  ];
}

/**
 * How far a point lies towards the pith from the ring through c, mm, measured across the rings:
 * (1 - |v|) / curvature, written so that straight rings are no special case.
 */
export function depthToPithMm(family: RingFamily): (xMm: number, yMm: number) => number {
  const { cxMm, cyMm, normalRad, curvature } = family;
  const [nx, ny] = [Math.cos(normalRad), Math.sin(normalRad)];
  return (xMm, yMm) => {
    const dx = xMm - cxMm;
    const dy = yMm - cyMm;
    const vx = nx - curvature * dx;
    const vy = ny - curvature * dy;
    const toward = 2 * (nx * dx + ny * dy) - curvature * (dx * dx + dy * dy);
    return toward / (1 + Math.sqrt(vx * vx + vy * vy));
  };
}

/** Ring line against the picture's horizontal, unsigned, 0 to pi/2. */
export function ringAngleRad(family: RingFamily, xMm: number, yMm: number): number {
  const [vx, vy] = acrossRings(family, xMm, yMm);
  return Math.atan2(Math.abs(vx), Math.abs(vy));
}
