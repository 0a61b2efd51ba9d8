import { averageDown } from '../../filter/averageDown.js';
import { gaussianBlur } from '../../filter/gaussianBlur.js';
import { createPlane, type Plane } from '../../image/plane.js';

/** How well two faces agree as the two halves of a resawn board would. */
export interface MatchLikeness {
  /** Edge numbers' owners: 2 * board + (face B ? 1 : 0). */
  readonly faces: readonly [number, number];
  /** Opened like a book (mirrored), or slipped sideways (repeated). */
  readonly kind: 'book' | 'slip';
  /** Whether both photos lie the same way round, or one must be turned end for end. */
  readonly sameWay: boolean;
  /** Correlation of the figure, -1..1. */
  readonly r: number;
}

/**
 * The figure of a face for comparing: log luminance between about 2 and 12 mm, in patches of a
 * millimetre, so that exposure, stain and fine pores do not count.
 */
export function coarseFigure(logLuminance: Plane, pxPerMm: number): Plane {
  const small = averageDown(logLuminance, Math.max(1, Math.round(pxPerMm)));
  const fine = createPlane(small.width, small.height);
  const slow = createPlane(small.width, small.height);
  gaussianBlur(small, 0.8, fine);
  gaussianBlur(small, 5, slow);
  for (let i = 0; i < fine.data.length; i++) fine.data[i] -= slow.data[i];
  return fine;
}

/**
 * Compares two faces in the four ways that a resawn pair can lie: mirrored about the joint (book),
 * mirrored end for end (book, one turned), repeated (slip), repeated and turned (slip, one turned).
 */
export function matchLikeness(
  a: Plane,
  b: Plane,
  faces: readonly [number, number],
): MatchLikeness[] {
  const ways = [
    { kind: 'slip', sameWay: true, flipX: false, flipY: false },
    { kind: 'slip', sameWay: false, flipX: true, flipY: true },
    { kind: 'book', sameWay: true, flipX: false, flipY: true },
    { kind: 'book', sameWay: false, flipX: true, flipY: false },
  ] as const;
  return ways.map(({ kind, sameWay, flipX, flipY }) => ({
    faces,
    kind,
    sameWay,
    r: correlation(a, b, flipX, flipY),
  }));
}

function correlation(a: Plane, b: Plane, flipX: boolean, flipY: boolean): number {
  const width = Math.min(a.width, b.width);
  const height = Math.min(a.height, b.height);
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let y = 0; y < height; y++) {
    const rowB = (flipY ? b.height - 1 - y : y) * b.width;
    for (let x = 0; x < width; x++) {
      const va = a.data[y * a.width + x];
      const vb = b.data[rowB + (flipX ? b.width - 1 - x : x)];
      ab += va * vb;
      aa += va * va;
      bb += vb * vb;
    }
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}
