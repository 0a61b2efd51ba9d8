/**
 * From how far the joint is last seen: the largest distance with V = 1.
 *
 * V need not fall evenly with distance, so the range is walked inward from the far end, and the
 * first step that reaches 1 is halved down to a part in ten thousand.
 *
 * @param vAtDistance visibility at a distance in mm.
 * @param range nearestMm default 150; farthestMm default 50 000; steps of the walk, default 60
 *   (each a tenth of the distance).
 * @returns distance in mm; `farthestMm` when it is still seen there; null when V is below 1 at
 *   every distance tried.
 */
export function vanishingDistanceMm(
  vAtDistance: (distanceMm: number) => number,
  { nearestMm = 150, farthestMm = 50_000, steps = 60 } = {},
): number | null {
  if (vAtDistance(farthestMm) >= 1) return farthestMm;
  const ratio = (nearestMm / farthestMm) ** (1 / steps);
  let unseen = farthestMm;
  for (let step = 1; step <= steps; step++) {
    const distance = farthestMm * ratio ** step;
    if (vAtDistance(distance) >= 1) return bisect(vAtDistance, distance, unseen);
    unseen = distance;
  }
  return null;
}

function bisect(vAtDistance: (distanceMm: number) => number, near: number, far: number): number {
  let seen = near;
  let unseen = far;
  while (unseen / seen > 1.0001) {
    const middle = Math.sqrt(seen * unseen);
    if (vAtDistance(middle) >= 1) seen = middle;
    else unseen = middle;
  }
  return seen;
}
