import type { PanelPhoto } from '../../core/image/panelPhoto.js';

/** A board on the bench, the way round it lies. */
export interface LaidBoard {
  readonly panel: PanelPhoto;
  /** Turned by 180 degrees in its own plane. */
  readonly turned: boolean;
}

/** Two boards laid edge to edge as one picture, and where they meet. */
export interface JoinedBoards {
  readonly panel: PanelPhoto;
  readonly jointYMm: number;
}

/**
 * Lays two boards of one px/mm edge to edge, left ends flush, each edge shorter by what jointing
 * takes from it, rounded to whole pixels so that no pixel is invented.
 * @param jointMm what jointing takes from each edge, mm
 */
export function joinBoards(upper: LaidBoard, lower: LaidBoard, jointMm: number): JoinedBoards {
  const { pxPerMm } = upper.panel;
  const takenPx = Math.round(jointMm * pxPerMm);
  const upperRows = upper.panel.image.height - takenPx;
  const lowerRows = lower.panel.image.height - takenPx;
  const width = Math.min(upper.panel.image.width, lower.panel.image.width);
  const data = new Uint8ClampedArray(3 * width * (upperRows + lowerRows));
  copyRows(upper, 0, upperRows, width, data, 0);
  copyRows(lower, takenPx, lowerRows, width, data, upperRows);
  const height = upperRows + lowerRows;
  return {
    panel: {
      image: { width, height, data },
      pxPerMm,
      widthMm: width / pxPerMm,
      heightMm: height / pxPerMm,
      notes: [],
    },
    jointYMm: upperRows / pxPerMm,
  };
}

function copyRows(
  { panel: { image }, turned }: LaidBoard,
  from: number,
  count: number,
  width: number,
  into: Uint8ClampedArray,
  at: number,
): void {
  for (let row = 0; row < count; row++) {
    const start = 3 * width * (at + row);
    if (!turned) {
      const source = 3 * image.width * (from + row);
      into.set(image.data.subarray(source, source + 3 * width), start);
      continue;
    }
    let source = 3 * (image.width * (image.height - from - row) - 1);
    for (let to = start; to < start + 3 * width; to += 3, source -= 3) {
      into[to] = image.data[source]!;
      into[to + 1] = image.data[source + 1]!;
      into[to + 2] = image.data[source + 2]!;
    }
  }
}
