import type { CornersPx, PhotoScale } from '../../core/image/photoScale.js';
import type { PointPx } from '../../core/image/pointPx.js';
import type { Photo } from '../state/project.js';

/** What stands on the pin page before it is taken. */
export interface PinDraft {
  readonly way: 'corners' | 'known';
  readonly corners: CornersPx;
  readonly ends: readonly [PointPx, PointPx];
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly lengthMm: number | null;
  /** The pins were moved by hand, so no guess may move them. */
  readonly touched: boolean;
}

/** The whole frame's corners, drawn in by a share of it. */
export function frameCorners(width: number, height: number, inset = 0.1): CornersPx {
  const [left, right] = [width * inset, width * (1 - inset)];
  const [top, bottom] = [height * inset, height * (1 - inset)];
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** The same four places, a quarter turn on: what was its left end becomes the panel's top edge. */
export function turnedCorners([topLeft, topRight, bottomRight, bottomLeft]: CornersPx): CornersPx {
  return [bottomLeft, topLeft, topRight, bottomRight];
}

/** Starts from what the photo is pinned to, or from pins a little inside the frame. */
export function draftOf({ scale, widthPx, heightPx }: Photo): PinDraft {
  const size = scale?.kind === 'size' ? scale : null;
  const known = scale?.kind === 'known' ? scale : null;
  return {
    way: known ? 'known' : 'corners',
    corners: size
      ? (size.cornersPx ?? frameCorners(widthPx, heightPx, 0))
      : frameCorners(widthPx, heightPx),
    ends: known
      ? [known.fromPx, known.toPx]
      : [
          { x: widthPx * 0.2, y: heightPx * 0.5 },
          { x: widthPx * 0.8, y: heightPx * 0.5 },
        ],
    widthMm: size?.widthMm ?? null,
    heightMm: size?.heightMm ?? null,
    lengthMm: known?.lengthMm ?? null,
    touched: scale !== null,
  };
}

/** The scale that the draft gives, or null while a length is missing. */
export function scaleOf(draft: PinDraft, { widthPx, heightPx }: Photo): PhotoScale | null {
  if (draft.way === 'known') {
    const [fromPx, toPx] = draft.ends;
    return draft.lengthMm === null
      ? null
      : { kind: 'known', fromPx, toPx, lengthMm: draft.lengthMm };
  }
  if (draft.widthMm === null || draft.heightMm === null) return null;
  const whole = frameCorners(widthPx, heightPx, 0);
  const isWhole = draft.corners.every(
    ({ x, y }, index) => Math.hypot(x - whole[index]!.x, y - whole[index]!.y) < 0.01,
  );
  return {
    kind: 'size',
    widthMm: draft.widthMm,
    heightMm: draft.heightMm,
    cornersPx: isWhole ? null : draft.corners,
  };
}
