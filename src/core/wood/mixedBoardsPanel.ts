import type { BoardSpec } from './boardSpec.js';
import type { FaceName } from './facePlane.js';
import type { ColourShift, PanelSpec, PieceSpec, SeamSpec } from './panelSpec.js';
import { placeOnFace } from './placeOnFace.js';

/** One board of a glue-up, from the top of the panel down. */
export interface PanelBoard {
  readonly board: BoardSpec;
  /** Its height in the panel, mm. */
  readonly heightMm: number;
  /** Face point at its upper left corner, default (0, 0). */
  readonly uMm?: number;
  readonly vMm?: number;
  readonly face?: FaceName;
  /** Turned half round in its own plane (end for end), default false. */
  readonly turned?: boolean;
  readonly colourShift?: ColourShift;
}

/** Different boards edge to edge; nothing is lost between them because nothing ever matched. */
export function mixedBoardsPanel(options: {
  readonly widthMm: number;
  readonly boards: readonly PanelBoard[];
  readonly glueWidthMm?: number;
  readonly glueContrast?: number;
}): PanelSpec {
  const { widthMm, boards } = options;
  const tops = boards.map((_, i) => boards.slice(0, i).reduce((sum, b) => sum + b.heightMm, 0));
  const heightMm = boards.reduce((sum, b) => sum + b.heightMm, 0);
  const pieces = boards.map((entry, i): PieceSpec => {
    const top = i === 0 ? -20 : tops[i]!;
    const bottom = i === boards.length - 1 ? heightMm + 20 : tops[i]! + entry.heightMm;
    const { uMm = 0, vMm = 0, turned = false } = entry;
    const placement = turned
      ? placeOnFace(0, tops[i]!, uMm + widthMm, vMm + entry.heightMm, true)
      : placeOnFace(0, tops[i]!, uMm, vMm);
    return {
      name: `board ${i + 1}`,
      board: i,
      face: entry.face ?? 'A',
      outline: [
        [-20, top],
        [widthMm + 20, top],
        [widthMm + 20, bottom],
        [-20, bottom],
      ],
      placement,
      ...(entry.colourShift === undefined ? {} : { colourShift: entry.colourShift }),
    };
  });
  const seams = tops.slice(1).map(
    (y, i): SeamSpec => ({
      id: `joint ${i + 1}`,
      kind: 'rip',
      line: { x1Mm: 0, y1Mm: y, x2Mm: widthMm, y2Mm: y },
      pieceA: i,
      pieceB: i + 1,
      lostMm: null,
      slideMm: null,
      wedgeRad: 0,
      glueWidthMm: options.glueWidthMm ?? 0,
      glueContrast: options.glueContrast ?? 0.3,
      gapMm: 0,
    }),
  );
  return { widthMm, heightMm, boards: boards.map((entry) => entry.board), pieces, seams };
}
