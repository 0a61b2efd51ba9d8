/** Ring angles measured over a board's width. */
export type RingProfile = readonly { readonly xMm: number; readonly angleDeg: number }[];

/** Which end of the board was photographed, its candidate's face up. */
export type EndSide = 'left' | 'right';

/**
 * The ring angles of the strip that a front is cut from, out of those over the whole end.
 *
 * Seen from outside with the face up, the left end has the face's upper edge on the photo's left,
 * the right end has it on the right. Between the places measured the angle runs straight; where
 * face and end differ in width the end is stretched to the face.
 *
 * @param fromMm upper edge of the front on the face, mm from the face's upper edge
 * @param acrossMm the front's size across the grain
 * @returns angles over the front alone, x from its upper edge, 0..acrossMm; empty when no angle
 *   was measured
 */
export function ringsAtFront(
  profile: RingProfile,
  endWidthMm: number,
  faceHeightMm: number,
  side: EndSide,
  fromMm: number,
  acrossMm: number,
): RingProfile {
  const onFace = profile
    .map(({ xMm, angleDeg }) => {
      const down = (xMm * faceHeightMm) / endWidthMm;
      return { xMm: side === 'left' ? down : faceHeightMm - down, angleDeg };
    })
    .sort((a, b) => a.xMm - b.xMm);
  if (onFace.length === 0) return [];
  const toMm = fromMm + acrossMm;
  const inside = onFace.filter(({ xMm }) => xMm > fromMm && xMm < toMm);
  return [
    { xMm: fromMm, angleDeg: angleAt(onFace, fromMm) },
    ...inside,
    { xMm: toMm, angleDeg: angleAt(onFace, toMm) },
  ].map(({ xMm, angleDeg }) => ({ xMm: xMm - fromMm, angleDeg }));
}

function angleAt(sorted: RingProfile, xMm: number): number {
  const next = sorted.findIndex((point) => point.xMm >= xMm);
  if (next <= 0) return (next < 0 ? sorted[sorted.length - 1] : sorted[0]).angleDeg;
  const [a, b] = [sorted[next - 1], sorted[next]];
  return a.angleDeg + ((b.angleDeg - a.angleDeg) * (xMm - a.xMm)) / (b.xMm - a.xMm);
}
